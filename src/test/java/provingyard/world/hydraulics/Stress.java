package provingyard.world.hydraulics;

import provingyard.numeric.RandomStreams;

public class Stress {
    public static void main(String[] a) {
        int yards = Integer.parseInt(a[0]);
        int per = 20;
        boolean loops = a[1].contains("l"), odd = a[1].contains("o"), any = a[1].contains("n"), dw = a[1].contains("d");
        int off = a.length > 2 ? Integer.parseInt(a[2]) : 0;
        int fails = 0, solves = 0, mass = 0, neg = 0, differ = 0;
        int[] hist = new int[301];
        long t0 = System.nanoTime();
        double worstDiff = 0, worstMass = 0;
        for (int y = off; y < off + yards; y++) {
            Network n = RandomYards.yard(y, new RandomYards.Parts(loops, odd, any, dw));
            NetworkSolver s = new NetworkSolver(n);
            NetworkState st = n.newState();
            var r = new RandomStreams(y).sequence("changes");
            double[] k0 = n.outletK.clone();
            for (int c = 0; c < per; c++) {
                for (int l = 0; l < n.linkCount(); l++)
                    if (n.linkIds().get(l).startsWith("v") && r.nextDouble() < 0.3) st.setOpen(l, !st.isOpen(l));
                if (n.outletCount() > 0 && r.nextDouble() < 0.6) {
                    int o = r.nextInt(n.outletCount());
                    double f = r.nextDouble();
                    st.setOutletK(o, f < 0.3 ? k0[o] : f < 0.8 ? k0[o] * 40 : f < 0.9 ? k0[o] * 0.1 : 0);
                }
                if (r.nextDouble() < 0.3 && n.isSource(n.nodeIds().size() > 0 ? 0 : 0))
                    st.setSourceHead(0, 2 + 60 * r.nextDouble());
                SolveStatus w = s.solve(st);
                solves++;
                hist[st.iterations()]++;
                NetworkState cold = st.copy();
                cold.forget();
                SolveStatus cs = s.solve(cold);
                solves++;
                hist[cold.iterations()]++;
                if (w != SolveStatus.CONVERGED || cs != SolveStatus.CONVERGED) {
                    fails++;
                    if (fails < 12)
                        System.out.println("FAIL yard " + y + " change " + c + " warm " + w + " "
                                + st.relativeFlowChange() + " " + st.headResidual() + " cold " + cs + " "
                                + cold.relativeFlowChange() + " " + cold.headResidual());
                    continue;
                }
                worstMass = Math.max(worstMass, st.massImbalance());
                if (st.massImbalance() > 1e-9) mass++;
                double d = 0;
                String where = "";
                for (int i = 0; i < n.nodeCount(); i++) {
                    double x = Math.abs(st.head(i) - cold.head(i));
                    if (x > d) {
                        d = x;
                        where = n.nodeIds().get(i);
                    }
                }
                if (d > 1e-6) {
                    differ++;
                    if (differ < 8)
                        System.out.println("DIFF yard " + y + " change " + c + " " + d + " at " + where + " x="
                                + n.kind(n.link("x")));
                }
                worstDiff = Math.max(worstDiff, d);
            }
        }
        int p = 0;
        long acc = 0;
        StringBuilder sb = new StringBuilder();
        for (int i = 0; i <= 300; i++) if (hist[i] > 0) sb.append(i + ":" + hist[i] + " ");
        System.out.println(a[1] + " solves " + solves + " fails " + fails + " mass " + mass + " worst " + worstMass
                + " differ " + differ + " worstDiff " + worstDiff + " us/solve "
                + (System.nanoTime() - t0) / 1e3 / solves + "\n" + sb);
    }
}

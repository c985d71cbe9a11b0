package provingyard.world.hydraulics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An immutable pipe network in flat arrays. Nodes, links and outlets are named by ids for reports and by indices, in
 * the order they were added, for speed. Sources are nodes too. Lengths in m, heads in m, flows in m3/s.
 *
 * <p>Inside, the unknown nodes are stored in elimination order ("slots"), the fixed heads after them; links in order of
 * their matrix entries and outlets in order of their nodes ("places"), so that the solver walks through memory forwards.
 * The links whose law is the plain power of flow both ways come first: nearly all of a yard's.
 */
public final class Network {

    /** An outlet as built: q = k p^n for a pressure head p in m. */
    record OutletSpec(String id, int node, double k, double n) {}

    /** A link as built. */
    record LinkSpec(
            String id,
            LinkKind kind,
            int from,
            int to,
            double lengthM,
            double diameterM,
            boolean oneWay,
            boolean open,
            double settingM,
            double startFlow,
            LinkLaw law) {

        /** Whether the law is a power of flow and the same in both directions. */
        boolean isPlain() {
            return law instanceof LinkLaw.Power && !oneWay && kind != LinkKind.PRV;
        }
    }

    private final List<String> nodeIds;
    private final List<String> linkIds;
    private final List<String> outletIds;
    private final Map<String, Integer> nodeIndex;
    private final Map<String, Integer> linkIndex;
    private final Map<String, Integer> outletIndex;
    private final List<LinkSpec> links;

    final Elimination elimination;
    final LinkLaws laws;
    final int junctions;
    /** Slot by node index. */
    final int[] slotOf;
    /** Elevation by slot, m. */
    final double[] elevation;
    /** Head of the sources by slot, m; NaN for junctions. */
    final double[] fixedHead;
    /** Place by link index. */
    final int[] linkPlace;
    /** Place by outlet index. */
    final int[] outletPlace;
    /** Number of links with a plain power law; their places come first. */
    final int plainLinks;
    /** Ends of links by place, as slots. */
    final int[] from;

    final int[] to;
    /** Entry of the matrix that joins a link's ends, or -1. */
    final int[] entry;

    final boolean[] isPrv;
    final boolean[] startsOpen;
    final double[] startFlow;
    /** Total head that a regulator holds at its outlet, m. */
    final double[] prvHead;
    /** Slot of each outlet's node, by place. */
    final int[] outletSlot;

    /** k and n of outlets by index, as built. */
    final double[] outletK;

    final double[] outletN;
    /** Sum of pump lifts at no flow, m. */
    final double pumpLift;

    Network(
            List<String> nodeIds,
            double[] elevationM,
            double[] fixedHeadM,
            List<LinkSpec> links,
            List<OutletSpec> outlets) {
        this.nodeIds = List.copyOf(nodeIds);
        this.links = List.copyOf(links);
        this.linkIds = links.stream().map(LinkSpec::id).toList();
        this.outletIds = outlets.stream().map(OutletSpec::id).toList();
        nodeIndex = index(this.nodeIds);
        linkIndex = index(linkIds);
        outletIndex = index(outletIds);

        int nodes = nodeIds.size();
        int[] junction = new int[nodes];
        int count = 0;
        for (int i = 0; i < nodes; i++) {
            junction[i] = Double.isNaN(fixedHeadM[i]) ? count++ : -1;
        }
        junctions = count;
        elimination = Elimination.of(junctions, joined(links, junction));
        slotOf = slots(junction);
        elevation = new double[nodes];
        fixedHead = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            elevation[slotOf[i]] = elevationM[i];
            fixedHead[slotOf[i]] = fixedHeadM[i];
        }

        int n = links.size();
        from = new int[n];
        to = new int[n];
        entry = new int[n];
        isPrv = new boolean[n];
        startsOpen = new boolean[n];
        startFlow = new double[n];
        prvHead = new double[n];
        boolean[] oneWay = new boolean[n];
        List<LinkSpec> inOrder = linksInOrder();
        linkPlace = new int[n];
        double lift = 0;
        for (int l = 0; l < n; l++) {
            LinkSpec link = inOrder.get(l);
            linkPlace[linkIndex.get(link.id())] = l;
            from[l] = slotOf[link.from()];
            to[l] = slotOf[link.to()];
            entry[l] = entry(link);
            isPrv[l] = link.kind() == LinkKind.PRV;
            startsOpen[l] = link.open();
            startFlow[l] = link.startFlow();
            prvHead[l] = elevation[to[l]] + link.settingM();
            oneWay[l] = link.oneWay();
            lift += link.law() instanceof LinkLaw.PumpCurve pump ? pump.h0() : 0;
        }
        pumpLift = lift;
        plainLinks = (int) links.stream().filter(LinkSpec::isPlain).count();
        laws = new LinkLaws(inOrder.stream().map(LinkSpec::law).toList(), oneWay);

        outletPlace = new int[outlets.size()];
        outletSlot = new int[outlets.size()];
        List<OutletSpec> outletsInOrder = outlets.stream()
                .sorted(Comparator.comparingInt(o -> slotOf[o.node()]))
                .toList();
        for (int o = 0; o < outletSlot.length; o++) {
            outletPlace[outletIndex.get(outletsInOrder.get(o).id())] = o;
            outletSlot[o] = slotOf[outletsInOrder.get(o).node()];
        }
        outletK = outlets.stream().mapToDouble(OutletSpec::k).toArray();
        outletN = outlets.stream().mapToDouble(OutletSpec::n).toArray();
    }

    /** Plain links first, each kind by the first of its slots to be eliminated, as the matrix entries are. */
    private List<LinkSpec> linksInOrder() {
        return links.stream()
                .sorted(Comparator.comparing(LinkSpec::isPlain)
                        .reversed()
                        .thenComparingInt(link -> Math.min(slotOf[link.from()], slotOf[link.to()])))
                .toList();
    }

    private int entry(LinkSpec link) {
        int a = slotOf[link.from()];
        int b = slotOf[link.to()];
        return a < junctions && b < junctions ? elimination.entry(a, b) : -1;
    }

    private static Map<String, Integer> index(List<String> ids) {
        Map<String, Integer> index = new LinkedHashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            index.put(ids.get(i), i);
        }
        return index;
    }

    private static List<int[]> joined(List<LinkSpec> links, int[] junction) {
        List<int[]> pairs = new ArrayList<>();
        for (LinkSpec link : links) {
            if (junction[link.from()] >= 0 && junction[link.to()] >= 0) {
                pairs.add(new int[] {junction[link.from()], junction[link.to()]});
            }
        }
        return pairs;
    }

    private int[] slots(int[] junction) {
        int[] slotOfJunction = new int[junctions];
        for (int k = 0; k < junctions; k++) {
            slotOfJunction[elimination.nodeOf[k]] = k;
        }
        int[] slots = new int[junction.length];
        int source = junctions;
        for (int i = 0; i < junction.length; i++) {
            slots[i] = junction[i] < 0 ? source++ : slotOfJunction[junction[i]];
        }
        return slots;
    }

    /** A builder with the textbook's constants. */
    public static NetworkBuilder builder() {
        return new NetworkBuilder(Constants.TEXTBOOK);
    }

    /** A builder with other constants. */
    public static NetworkBuilder builder(Constants constants) {
        return new NetworkBuilder(constants);
    }

    /** A fresh state: links open or closed as built, outlets as built, nothing solved. */
    public NetworkState newState() {
        return new NetworkState(this);
    }

    /** Number of nodes, sources included. */
    public int nodeCount() {
        return nodeIds.size();
    }

    /** Number of links. */
    public int linkCount() {
        return linkIds.size();
    }

    /** Number of outlets. */
    public int outletCount() {
        return outletIds.size();
    }

    /** Ids of all nodes in order of index. */
    public List<String> nodeIds() {
        return nodeIds;
    }

    /** Ids of all links in order of index. */
    public List<String> linkIds() {
        return linkIds;
    }

    /** Ids of all outlets in order of index. */
    public List<String> outletIds() {
        return outletIds;
    }

    /** Index of a node or source. An unknown id is a defect of the caller. */
    public int node(String id) {
        return known(nodeIndex, "node", id);
    }

    /** Index of a link. An unknown id is a defect of the caller. */
    public int link(String id) {
        return known(linkIndex, "link", id);
    }

    /** Index of an outlet. An unknown id is a defect of the caller. */
    public int outlet(String id) {
        return known(outletIndex, "outlet", id);
    }

    private static int known(Map<String, Integer> index, String kind, String id) {
        Integer found = index.get(id);
        if (found == null) {
            throw new IllegalArgumentException("no " + kind + " '" + id + "' in this network");
        }
        return found;
    }

    /** Whether the node's head is fixed. */
    public boolean isSource(int node) {
        return slotOf[node] >= junctions;
    }

    /** Elevation of a node, m. */
    public double elevation(int node) {
        return elevation[slotOf[node]];
    }

    /** What a link is. */
    public LinkKind kind(int link) {
        return links.get(link).kind();
    }

    /** Index of the node a link starts at; positive flow leaves it. */
    public int from(int link) {
        return links.get(link).from();
    }

    /** Index of the node a link ends at. */
    public int to(int link) {
        return links.get(link).to();
    }

    /** Length of a pipe, m; 0 for other links. */
    public double length(int link) {
        return links.get(link).lengthM();
    }

    /** Inner diameter of a link, m; NaN where it has none (devices, pumps, supplies). */
    public double diameter(int link) {
        return links.get(link).diameterM();
    }

    /** Whether a link lets no reverse flow pass. */
    public boolean isOneWay(int link) {
        return laws.isOneWay(linkPlace[link]);
    }

    /** Head loss of an open link at a flow, m (negative for a pump's lift). */
    public double headLoss(int link, double flowM3s) {
        LinkLaws own = laws.forSolver();
        own.evaluate(linkPlace[link], flowM3s);
        return own.loss;
    }
}

package provingyard.bench;

import provingyard.world.hydraulics.NetworkSolver;
import provingyard.world.hydraulics.NetworkState;
import provingyard.world.hydraulics.SolveStatus;
import provingyard.world.hydraulics.SolverSettings;

/** A sprinkler yard, solved, in which one thing changes after the other. */
final class SolvedYard {

    private final NetworkState state;
    private final NetworkSolver solver;
    private final int[] valves;
    private final int heads;
    private final boolean allWater;
    private int at;

    /** Builds the yard and solves it cold, with all zones open or the first alone. */
    SolvedYard(int nodes, SolverSettings settings, boolean allWater) {
        this.allWater = allWater;
        SprinklerYard yard = SprinklerYard.ofNodes(nodes);
        state = yard.network().newState();
        solver = new NetworkSolver(yard.network(), settings);
        valves = new int[yard.zones()];
        for (int z = 0; z < valves.length; z++) {
            valves[z] = yard.valve(z);
            state.setOpen(valves[z], allWater || z == 0);
        }
        int all = yard.network().outletCount();
        heads = allWater ? all : all / valves.length;
        solve();
    }

    /** Swaps one nozzle, each watering head in turn: one third larger, and back the next time round. */
    void changeOutlet() {
        int head = (int) ((at * 7L) % heads);
        boolean isLarge = state.outletK(head) > SprinklerYard.HEAD_K;
        state.setOutletK(head, isLarge ? SprinklerYard.HEAD_K : SprinklerYard.HEAD_K * 4 / 3);
        at = (at + 1) % (1 << 20);
    }

    /** Moves the open zone, or the shut one, by one. */
    void swapValves() {
        state.setOpen(valves[at], allWater);
        at = (at + 1) % valves.length;
        state.setOpen(valves[at], !allWater);
    }

    double solve() {
        if (solver.solve(state) != SolveStatus.CONVERGED) {
            throw new IllegalStateException(state.problem());
        }
        return state.relativeFlowChange();
    }
}

package provingyard.world.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The cells in the order in which runoff passes them, as flat arrays by their place in it; shared and never changed. */
final class RunoffWay {

    /** Places from the first up to but not with the last that are all of one kind. */
    record Stretch(GroundCells.Kind kind, int from, int to) {}

    final List<Stretch> stretches;
    final int[] cell;
    final double[] rainShare;
    /** Slots in the root zone and in the pavement; -1 for none. */
    final int[] soilSlot;

    final int[] pavedSlot;
    /** Place that takes the runoff; -1 off the site. */
    final int[] down;
    /** Runoff from plants to where none grow, or off the site. */
    final boolean[] leavesPlants;
    /** Runoff from where nothing grows to plants. */
    final boolean[] comesToPlants;

    /** The way over some cells; slots by cell. */
    RunoffWay(GroundCells cells, int[] soilSlots, int[] pavedSlots) {
        cell = cells.order();
        int n = cell.length;
        int[] placeOf = new int[n];
        for (int i = 0; i < n; i++) {
            placeOf[cell[i]] = i;
        }
        rainShare = Arrays.stream(cell).mapToDouble(c -> cells.rainShare()[c]).toArray();
        soilSlot = Arrays.stream(cell).map(c -> soilSlots[c]).toArray();
        pavedSlot = Arrays.stream(cell).map(c -> pavedSlots[c]).toArray();
        down = new int[n];
        leavesPlants = new boolean[n];
        comesToPlants = new boolean[n];
        for (int i = 0; i < n; i++) {
            int below = cells.downhill()[cell[i]];
            boolean ontoPlants = below >= 0 && cells.planted(below);
            down[i] = below < 0 ? -1 : placeOf[below];
            leavesPlants[i] = cells.planted(cell[i]) && !ontoPlants;
            comesToPlants[i] = !cells.planted(cell[i]) && ontoPlants;
        }
        stretches = stretches(cells, cell);
    }

    private static List<Stretch> stretches(GroundCells cells, int[] cell) {
        List<Stretch> found = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= cell.length; i++) {
            GroundCells.Kind kind = cells.kind(cell[from]);
            if (i == cell.length || cells.kind(cell[i]) != kind) {
                found.add(new Stretch(kind, from, i));
                from = i;
            }
        }
        return List.copyOf(found);
    }
}

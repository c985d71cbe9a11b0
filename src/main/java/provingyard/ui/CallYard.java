package provingyard.ui;

import java.util.List;
import provingyard.season.Snapshot;

/**
 * The yard as a technician sees it: hour and sky of now, and of the water only what was looked at. What a case does to
 * the ground, and where it leaks, is not given away: whoever wants to know must look.
 */
final class CallYard {

    private CallYard() {}

    /**
     * What is drawn.
     *
     * @param sound the yard with nothing wrong on it, on arrival
     * @param now the yard as it lives
     * @param looked the yard while heads were looked at; null where none are
     */
    static Snapshot seen(Snapshot sound, Snapshot now, Snapshot looked) {
        Snapshot moment = looked == null ? now : looked;
        return new Snapshot(
                moment.tick(),
                moment.clock(),
                moment.sky(),
                sound.nx(),
                sound.ny(),
                sound.wetness(),
                sound.film(),
                sound.ice(),
                sound.stress(),
                moment.cold(),
                moment.paving(),
                looked == null ? atRest(sound.zones()) : looked.zones(),
                looked == null ? dry(sound.heads()) : looked.heads(),
                new double[sound.links().length],
                sound.sensors(),
                List.of(),
                sound.masterOpen(),
                0,
                sound.ledger(),
                sound.spent());
    }

    private static List<Snapshot.Zone> atRest(List<Snapshot.Zone> zones) {
        return zones.stream()
                .map(z -> new Snapshot.Zone(z.id(), false, false, 0, 0))
                .toList();
    }

    private static List<Snapshot.Head> dry(List<Snapshot.Head> heads) {
        return heads.stream()
                .map(h -> new Snapshot.Head(h.id(), false, 0, Double.NaN, 0, 0, 0))
                .toList();
    }
}

package provingyard.world.weather;

import provingyard.reference.Table;

/** The project's reference files, as the weather reads them. */
final class Reference {

    static final DataFiles FILES = Table::open;

    private Reference() {}
}

package provingyard.scenario;

import java.util.List;

/** Writes a site as JSON whose reading gives an equal site. Of the catalogue only what the site adds is written. */
public final class ScenarioWriter {

    private ScenarioWriter() {}

    /** The site's text. */
    public static String write(Scenario site) {
        return DocumentWriter.write(ScenarioReader.form(), "../shared/schema/scenario.schema.json", withOwn(site));
    }

    private static Scenario withOwn(Scenario site) {
        Catalogue all = site.catalogue();
        Catalogue shipped = Shelf.shipped();
        Catalogue own = new Catalogue(
                own(all.soils(), shipped.soils()),
                own(all.plants(), shipped.plants()),
                own(all.pavings(), shipped.pavings()),
                own(all.nozzles(), shipped.nozzles()),
                own(all.pipes(), shipped.pipes()));
        return site.with(own, site.yard(), site.faults());
    }

    private static <T> List<T> own(List<T> all, List<T> shipped) {
        return all.stream().filter(each -> !shipped.contains(each)).toList();
    }
}

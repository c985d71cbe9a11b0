package provingyard.scenario;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;

/**
 * One site with its lesson: all that an author writes.
 *
 * @param format version of the document's form, {@code 1.0}
 * @param id stable name, {@code ^[a-z][a-z0-9-]{1,31}$}
 * @param title the site's name in both languages
 * @param subtitle what it is about, in a few words
 * @param work tune or service call
 * @param level 1 (first steps) to 5
 * @param catalogue soils, plants, paving, nozzles and pipe makes that this site adds to the shipped catalogue (after
 *     reading: the shipped ones and the site's own, merged)
 * @param setUps reference set-ups by name ({@code careless}, {@code textbook}), in the form of a set-up file
 * @param call the service call, absent on tune sites
 */
public record Scenario(
        String format,
        String id,
        Text title,
        Text subtitle,
        Work work,
        int level,
        Lesson lesson,
        Place place,
        SeasonPlan season,
        WeatherPlan weather,
        Catalogue catalogue,
        YardPlan yard,
        Plumbing plumbing,
        Schedule schedule,
        Kit kit,
        List<FaultPlan> faults,
        Locks locks,
        Costs costs,
        ReferenceSetUps setUps,
        ServiceCall call,
        List<String> remarks) {

    /** The same site with another catalogue, plan and faults. */
    public Scenario with(Catalogue otherCatalogue, YardPlan otherYard, List<FaultPlan> otherFaults) {
        return with(weather, otherCatalogue, otherYard, otherFaults);
    }

    /** The same site under other weather. */
    public Scenario under(WeatherPlan otherWeather) {
        return with(otherWeather, catalogue, yard, faults);
    }

    /** The same site as a service call with these possible faults. */
    public Scenario called(ServiceCall other, List<FaultPlan> otherFaults) {
        return with(Work.SERVICE_CALL, weather, catalogue, yard, otherFaults, other);
    }

    private Scenario with(
            WeatherPlan otherWeather, Catalogue otherCatalogue, YardPlan otherYard, List<FaultPlan> otherFaults) {
        return with(work, otherWeather, otherCatalogue, otherYard, otherFaults, call);
    }

    private Scenario with(
            Work otherWork,
            WeatherPlan otherWeather,
            Catalogue otherCatalogue,
            YardPlan otherYard,
            List<FaultPlan> otherFaults,
            ServiceCall otherCall) {
        return new Scenario(
                format,
                id,
                title,
                subtitle,
                otherWork,
                level,
                lesson,
                place,
                season,
                otherWeather,
                otherCatalogue,
                otherYard,
                plumbing,
                schedule,
                kit,
                otherFaults,
                locks,
                costs,
                setUps,
                otherCall,
                remarks);
    }

    /** Hexadecimal SHA-256 of what the document says, whatever its layout and units. */
    public String contentHash() {
        return ContentHash.of(this);
    }

    /**
     * Reference set-ups as located JSON, so that the set-up package, which this one does not know, reads them with
     * the same reader as a trainee's file.
     *
     * @param careless what a hurried installer would do; absent on service calls
     * @param textbook what a good technician would do; absent on service calls
     */
    public record ReferenceSetUps(JsonNode careless, JsonNode textbook) {}
}

package provingyard.ui;

import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import provingyard.scenario.SensorKind;
import provingyard.season.Past;
import provingyard.season.Season;
import provingyard.setup.Placement;

/**
 * What was true in the lived days where the selected sensor stands, looked up off the window's thread: when the sensor is
 * another one or stands elsewhere, and, while time stands still, when more days were lived, or were lived again.
 */
final class Hindsight {

    private static final long MINUTES_A_DAY = 1440;

    /** A past, and what it is the past of. */
    private record Question(Placement placement, long days, int life) {

        /** Whether another question has the same answer. */
        boolean same(Question other) {
            return other != null && days == other.days && life == other.life && here(other.placement);
        }

        boolean here(Placement other) {
            return Past.alike(placement, other);
        }
    }

    private final YardModel model;
    private final Executor worker;
    private final Executor window;
    private final ReadOnlyObjectWrapper<Past> past = new ReadOnlyObjectWrapper<>();
    private Question asked;
    private long lived;
    private int life;

    /**
     * A view of the past.
     *
     * @param worker where pasts are worked out, one after the other
     * @param window where they are told
     */
    Hindsight(YardModel model, Executor worker, Executor window) {
        this.model = model;
        this.worker = worker;
        this.window = window;
        model.selectedProperty().addListener(o -> ask());
        model.draftProperty().addListener(o -> ask());
        model.frameProperty().addListener(o -> ask());
        ask();
    }

    /** The past at the selected sensor's place; null while it is looked up, and where there is none. */
    ReadOnlyObjectProperty<Past> pastProperty() {
        return past.getReadOnlyProperty();
    }

    private void ask() {
        String id = model.selectedProperty().get();
        Placement placement = id == null ? null : model.setUp().sensor(id).orElse(null);
        SeasonPlayer.Frame frame = model.frameProperty().get();
        if (placement == null || placement.kind() == SensorKind.FLOW || frame == null) {
            asked = null;
            past.set(null);
            return;
        }
        life += frame.lived() < lived ? 1 : 0;
        lived = frame.lived();
        Question question = new Question(placement, frame.lived() / MINUTES_A_DAY, life);
        boolean here = asked != null && asked.here(placement);
        if (question.same(asked) || here && frame.playing()) {
            return;
        }
        asked = question;
        if (!here) {
            past.set(null);
        }
        model.player().handOver(season -> worker.execute(() -> answer(question, season)));
    }

    private void answer(Question question, Season season) {
        if (question == asked) {
            Past found = model.site().siting().past(season, question.placement());
            window.execute(() -> {
                if (question == asked) {
                    past.set(found);
                }
            });
        }
    }
}

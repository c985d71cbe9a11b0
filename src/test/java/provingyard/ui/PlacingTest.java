package provingyard.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.control.ListView;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import provingyard.picture.Theme;
import provingyard.quantity.UnitSystem;
import provingyard.scenario.Point;
import provingyard.scenario.SensorKind;
import provingyard.setup.Placement;
import provingyard.setup.SetUp;
import provingyard.ui.pages.YardPage;

/** A sensor is placed by mouse, by keys and from the list, and set by slider and by field. */
class PlacingTest {

    private static final Point OPEN = new Point(5, 1.5);
    private static final Point HOUSE = new Point(10, 9);

    private static OpenProgram program;
    private static YardPage page;
    private YardModel model;

    @BeforeAll
    static void window() throws Exception {
        program = OpenProgram.show(1280, 720);
        program.look(Theme.LIGHT, "en", UnitSystem.METRIC);
        page = new YardPage(OpenProgram.ROBOT);
    }

    @AfterAll
    static void close() throws Exception {
        program.close();
    }

    @BeforeEach
    void yard() throws Exception {
        OpenProgram.ROBOT.release(MouseButton.PRIMARY);
        model = program.open(States.TANSY_ROW, SetUp.CLOCK_ALONE);
    }

    private Placement.Rain rain() {
        return (Placement.Rain) model.setUp().of(SensorKind.RAIN).get(0);
    }

    /** Drags a sensor from the kit to a place of the yard and holds it there. */
    private void drag(SensorKind kind, Point to) {
        YardPane yard = program.shell().yard().yard();
        Point corner = yard.yardAt(0, 0);
        double perPx = (yard.yardAt(100, 0).x() - corner.x()) / 100;
        double top = yard.localToScene(0, 0).getY();
        double x = (to.x() - corner.x()) / perPx / yard.getWidth();
        double y = ((corner.y() - to.y()) / perPx - top) / yard.getHeight();
        page.drag(kind, x, y);
    }

    @Test
    void byMouse() {
        drag(SensorKind.RAIN, OPEN);
        assertNotNull(model.handProperty().get(), "in hand");
        assertTrue(page.handWords().startsWith("Fits here sky view"), page.handWords());
        Point there = model.handProperty().get().spot();
        page.letGo();
        assertNull(model.handProperty().get(), "laid down");
        assertEquals(there, rain().at());
        assertEquals(0, OPEN.distance(there), 0.1, "where the pointer was: " + there);
        assertEquals("rain-1", model.selectedProperty().get());
    }

    @Test
    void byMouseWhereItDoesNotFit() {
        drag(SensorKind.RAIN, HOUSE);
        assertTrue(
                page.handWords().startsWith("Not inside the building"),
                page.handWords() + model.handProperty().get());
        page.letGo();
        assertEquals(SetUp.CLOCK_ALONE, model.setUp());
        assertNull(model.handProperty().get(), "back in the kit");
    }

    @Test
    void byKeys() {
        page.takeByKeys(SensorKind.RAIN);
        assertNotNull(model.handProperty().get(), "in hand");
        OpenProgram.ROBOT.interact(() -> model.carry(SensorKind.RAIN, null, new Point(10, 2)));
        page.press(KeyCode.RIGHT).press(KeyCode.RIGHT).press(KeyCode.UP, KeyCode.SHIFT);
        page.press(KeyCode.ENTER);
        assertEquals(11, rain().at().x(), 1e-9);
        assertEquals(2.1, rain().at().y(), 1e-9);
    }

    @Test
    void escPutsItBack() {
        page.takeByKeys(SensorKind.FREEZE).press(KeyCode.ESCAPE);
        assertNull(model.handProperty().get());
        assertEquals(SetUp.CLOCK_ALONE, model.setUp());
        assertEquals("", page.handWords());
    }

    @Test
    void byNumbersFromTheList() {
        page.takeByKeys(SensorKind.RAIN).press(KeyCode.ENTER);
        OpenProgram.ROBOT.interact(() -> model.selectedProperty().set(null));
        page.press(KeyCode.L).press(KeyCode.DOWN);
        ListView<?> list = OpenProgram.ROBOT.lookup("#device-list").query();
        assertTrue(list.isFocused(), "the list has the focus");
        OpenProgram.ROBOT.interact(() -> list.getSelectionModel().select(0));
        page.settled();
        assertEquals("rain-1", model.selectedProperty().get());
        page.type("place-east", "3.5 m").type("place-north", "2");
        assertEquals(new Point(3.5, 2), rain().at());
        page.type("place-east", "10").type("place-north", "9");
        assertEquals(2, rain().at().y(), 1e-9, "not into the house");
        OpenProgram.ROBOT.interact(list::requestFocus);
        page.press(KeyCode.DELETE);
        assertEquals(0, model.setUp().sensors().size());
    }

    @Test
    void setByFieldAndSlider() {
        page.takeByKeys(SensorKind.RAIN).press(KeyCode.ENTER);
        page.type("field-setting-rainTrip", "nine drops");
        assertTrue(page.marked("field-setting-rainTrip"));
        assertFalse(page.complaint("field-setting-rainTrip").isEmpty());
        assertEquals(0.00635, rain().trip(), 1e-12);
        page.type("field-setting-rainTrip", "1/2 in");
        assertEquals(0.0127, rain().trip(), 1e-12);
        assertFalse(page.marked("field-setting-rainTrip"));
        assertEquals("", page.complaint("field-setting-rainTrip"));

        int steps = model.draftProperty().get().past().size();
        Slider slider = OpenProgram.ROBOT.lookup("#slider-setting-rainTrip").query();
        OpenProgram.ROBOT.interact(() -> {
            slider.setValueChanging(true);
            slider.setValue(0.01);
            slider.setValue(0.02004);
        });
        assertEquals(0.0127, rain().trip(), 1e-12, "not before it is let go");
        assertEquals("20 mm", page.field("field-setting-rainTrip").replace('\u00a0', ' '));
        OpenProgram.ROBOT.interact(() -> slider.setValueChanging(false));
        assertEquals(0.02, rain().trip(), 1e-12, "what is read is what is set");
        assertEquals(steps + 1, model.draftProperty().get().past().size(), "one step back");
    }

    @Test
    void thePlotFollowsWhatWasLived() throws Exception {
        page.takeByKeys(SensorKind.RAIN).press(KeyCode.ENTER);
        OpenProgram.ROBOT.interact(() -> model.moveTo("rain-1", OPEN));
        assertEquals("What it would have done", page.wouldHave());
        program.at(model, 30 * 1440L);
        OpenProgram.until(() -> page.wouldHave().contains("of the last 30 days"));
        Slider slider = OpenProgram.ROBOT.lookup("#slider-setting-rainTrip").query();
        String before = page.wouldHave();
        OpenProgram.ROBOT.interact(() -> {
            slider.setValueChanging(true);
            slider.setValue(0.025);
        });
        assertFalse(before.equals(page.wouldHave()), "live while it moves: " + before);
        OpenProgram.ROBOT.interact(() -> slider.setValueChanging(false));
    }
}

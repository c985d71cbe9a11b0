package provingyard.ui;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import provingyard.quantity.Show;
import provingyard.season.LogBook;
import provingyard.season.Season;

/** What a technician reads at the controller, over the yard: runs, zones, nights, trips and alarms; sorts, exports. */
final class RecordsSheet extends VBox {

    private static final double SCROLL_BAR = 22;
    private static final long BETWEEN_LOOKS = 700_000_000L;

    private final YardModel model;
    private final Words words;
    private final SensorNames names;
    private final TableView<RecordsTable.Row> table = new TableView<>();
    private final Label total = new Label();
    private final Map<RecordsTable.Page, ToggleButton> pages = new EnumMap<>(RecordsTable.Page.class);
    private RecordsTable.Page page = RecordsTable.Page.RUNS;
    private RecordsTable shown;
    private LogBook book;
    private long read = -1;
    private long looked;

    RecordsSheet(YardModel model, Words words, Runnable close) {
        this.model = model;
        this.words = words;
        names = new SensorNames(model, words);
        setId("records");
        getStyleClass().addAll("sheet", "records");
        setSpacing(12);
        setVisible(false);
        table.setId("records-table");
        table.setColumnResizePolicy(TableView.UNCONSTRAINED_RESIZE_POLICY);
        table.accessibleTextProperty().bind(words.live("records.keys"));
        table.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        table.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                showMinute();
            }
        });
        VBox.setVgrow(table, Priority.ALWAYS);
        total.setWrapText(true);
        total.getStyleClass().addAll("ink2");
        Label keys = new Label();
        words.bind(keys.textProperty(), "records.keys");
        keys.setWrapText(true);
        keys.getStyleClass().addAll("small", "ink3");
        getChildren().addAll(head(close), segments(), table, total, keys);
        words.languageChanges().addListener(o -> show());
        words.units().addListener(o -> show());
    }

    private HBox head(Runnable close) {
        Label title = new Label();
        words.bind(title.textProperty(), "records.title");
        title.getStyleClass().add("section-title");
        title.setMinWidth(0);
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        Button export = new Button();
        export.setId("records-export");
        export.setGraphic(IconNode.of("export", 16));
        export.setMinWidth(Region.USE_PREF_SIZE);
        words.bind(export.textProperty(), "records.export");
        export.setOnAction(e -> chooseFile());
        Button shut = new Button();
        shut.setId("records-close");
        shut.setGraphic(IconNode.of("cross", 16));
        shut.getStyleClass().add("quiet");
        shut.accessibleTextProperty().bind(words.live("records.close"));
        shut.setOnAction(e -> close.run());
        HBox box = new HBox(10, title, export, shut);
        box.setAlignment(Pos.CENTER_LEFT);
        return box;
    }

    private HBox segments() {
        ToggleGroup group = new ToggleGroup();
        HBox box = new HBox();
        box.getStyleClass().add("segments");
        for (RecordsTable.Page one : RecordsTable.Page.values()) {
            ToggleButton button = new ToggleButton();
            button.setId("records-" + one.name());
            words.bind(button.textProperty(), "records.page." + one.name());
            button.setToggleGroup(group);
            button.setSelected(one == page);
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setOnAction(e -> {
                button.setSelected(true);
                page = one;
                show();
            });
            pages.put(one, button);
            box.getChildren().add(button);
        }
        HBox row = new HBox(box);
        row.setMinHeight(Region.USE_PREF_SIZE);
        return row;
    }

    /** Opens the sheet at what the controller knows now. */
    void open() {
        setVisible(true);
        read = -1;
        pulse();
        table.requestFocus();
    }

    /** Reads the controller again where time went on; called once a pulse. */
    void pulse() {
        SeasonPlayer.Frame frame = model.frameProperty().get();
        boolean due = frame != null && frame.lived() != read && System.nanoTime() - looked > BETWEEN_LOOKS;
        if (!isVisible() || !due) {
            return;
        }
        looked = System.nanoTime();
        read = frame.lived();
        model.player()
                .ask(
                        Season::logBook,
                        now -> Platform.runLater(() -> {
                            book = now;
                            show();
                        }));
    }

    private void show() {
        if (book == null) {
            return;
        }
        List<TableColumn<RecordsTable.Row, ?>> before = List.copyOf(table.getSortOrder());
        int sorted = before.isEmpty() ? -1 : table.getColumns().indexOf(before.get(0));
        TableColumn.SortType way = before.isEmpty() ? null : before.get(0).getSortType();
        boolean same =
                shown != null && shown.columns().size() == table.getColumns().size() && page == shownPage();
        int line = table.getSelectionModel().getSelectedIndex();
        RecordsTable next = new RecordsTable.Maker(words, names::of).make(page, book);
        if (!same || !next.columns().equals(shown.columns())) {
            columns(next);
            sorted = same ? sorted : -1;
        }
        shown = next;
        table.setUserData(page);
        table.getItems().setAll(next.rows());
        if (sorted >= 0) {
            table.getColumns().get(sorted).setSortType(way);
            table.getSortOrder().setAll(List.of(table.getColumns().get(sorted)));
            table.sort();
        }
        if (line >= 0 && same) {
            table.getSelectionModel().select(Math.min(line, next.rows().size() - 1));
        }
        Label none = new Label(words.say("records.none"));
        none.getStyleClass().add("ink2");
        table.setPlaceholder(none);
        total.setText(total());
    }

    private Object shownPage() {
        return table.getUserData();
    }

    private String total() {
        String runs = words.say(
                "records.total", book.runs().size(), words.display().text(Show.DURATION, 60.0 * book.minutes()));
        if (!book.watched()) {
            return runs + " " + words.say("records.noFlow");
        }
        return runs
                + " "
                + words.say(
                        "records.totalFlow",
                        words.display().text(Show.VOLUME, book.volume()),
                        words.display().text(Show.VOLUME, book.idleVolume()));
    }

    private void columns(RecordsTable next) {
        table.getColumns().clear();
        double all =
                next.columns().stream().mapToDouble(RecordsTable.Column::width).sum();
        for (int i = 0; i < next.columns().size(); i++) {
            RecordsTable.Column column = next.columns().get(i);
            TableColumn<RecordsTable.Row, RecordsTable.Cell> made = new TableColumn<>(column.name());
            int at = i;
            made.setCellValueFactory(
                    c -> new ReadOnlyObjectWrapper<>(c.getValue().cells().get(at)));
            made.setCellFactory(c -> new TextOfCell());
            made.setComparator(RecordsTable.Cell::compareTo);
            made.setReorderable(false);
            made.setResizable(false);
            made.prefWidthProperty()
                    .bind(table.widthProperty().subtract(SCROLL_BAR).multiply(column.width() / all));
            if (column.number()) {
                made.getStyleClass().add("number");
            }
            table.getColumns().add(made);
        }
    }

    private static final class TextOfCell extends TableCell<RecordsTable.Row, RecordsTable.Cell> {
        @Override
        protected void updateItem(RecordsTable.Cell cell, boolean empty) {
            super.updateItem(cell, empty);
            setText(empty || cell == null ? null : cell.text());
        }
    }

    private void key(KeyEvent e) {
        int digit = e.getText().length() == 1 ? e.getText().charAt(0) - '1' : -1;
        if (digit >= 0 && digit < table.getColumns().size() && !e.isShortcutDown()) {
            sortBy(digit);
            e.consume();
        } else if (e.getCode() == javafx.scene.input.KeyCode.ENTER) {
            showMinute();
            e.consume();
        }
    }

    /** Sorts by a column; a second time the other way round. */
    private void sortBy(int index) {
        TableColumn<RecordsTable.Row, ?> column = table.getColumns().get(index);
        boolean again = table.getSortOrder().contains(column) && column.getSortType() == TableColumn.SortType.ASCENDING;
        column.setSortType(again ? TableColumn.SortType.DESCENDING : TableColumn.SortType.ASCENDING);
        table.getSortOrder().setAll(List.of(column));
        table.sort();
    }

    /** Shows the yard at the minute that the chosen line tells of. */
    private void showMinute() {
        RecordsTable.Row row = table.getSelectionModel().getSelectedItem();
        if (row != null && row.tick() >= 0) {
            model.player().show(row.tick() + 1);
        }
    }

    private void chooseFile() {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(words.say("records.files"), "*.csv"));
        chooser.setInitialFileName(model.scenario().id() + "-" + words.say("records.file." + page.name()) + ".csv");
        File file = chooser.showSaveDialog(getScene().getWindow());
        if (file != null) {
            export(file.toPath());
        }
    }

    /** Writes the page as it stands; says so when that fails. */
    void export(Path file) {
        try {
            SafeFile.write(file, shown.csv());
        } catch (IOException e) {
            Notice.show(getScene(), words.say("records.title"), words.say("records.notSaved", file));
        }
    }
}

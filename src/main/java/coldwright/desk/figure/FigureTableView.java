package coldwright.desk.figure;

import coldwright.desk.figure.model.FigureTable;
import coldwright.desk.messages.TextControls;

import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;

import java.util.List;

/** The data of a figure as a table that can be read with the keyboard. */
final class FigureTableView extends TableView<List<String>> {
    private static final double LEAST_COLUMN_EMS = 6;

    private final ReadOnlyDoubleProperty emPx;
    private List<String> heads = List.of();

    FigureTableView(ReadOnlyDoubleProperty emPx) {
        this.emPx = emPx;
        getStyleClass().add("data-table");
        setPlaceholder(new Label("–"));
        getSelectionModel().setCellSelectionEnabled(false);
    }

    /** Shows a table, if it isn't shown already. */
    void show(FigureTable table) {
        setPrefHeight(emPx.get() * 15);
        setMinHeight(emPx.get() * 8);
        if (!table.columns().equals(heads)) {
            heads = table.columns();
            getColumns().clear();
            for (int i = 0; i < heads.size(); i++) {
                getColumns().add(column(table, i, emPx.get()));
            }
        }
        if (!table.rows().equals(getItems())) {
            getItems().setAll(table.rows());
        }
    }

    private static TableColumn<List<String>, String> column(
            FigureTable table, int index, double emPx) {
        TableColumn<List<String>, String> column = new TableColumn<>();
        Label head = TextControls.label(table.columns().get(index), "data-head");
        column.setGraphic(head);
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(row.getValue().get(index)));
        column.setSortable(false);
        column.setReorderable(false);
        double longest =
                table.rows().stream().mapToInt(row -> row.get(index).length()).max().orElse(0);
        double wide = Math.max(LEAST_COLUMN_EMS, Math.min(30, longest * 0.5 + 1.5)) * emPx * 0.9;
        column.setPrefWidth(wide);
        head.setPrefWidth(wide - emPx);
        boolean numbers =
                table.rows().stream()
                        .map(row -> row.get(index))
                        .allMatch(text -> text.matches("[−0-9.,\u2009·⁰¹²³⁴⁵⁶⁷⁸⁹⁻∞–]*"));
        column.getStyleClass().add(numbers ? "data-number" : "data-word");
        return column;
    }
}

package org.amberyard.workbench.sheets;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.exchange.sheet.SheetColumn;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.language.Words;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;

/** The columns of a sheet, and what each is said to hold in which unit. */
final class ColumnTable {
    private final TableChoice choice;
    private final Runnable changed;
    private final Composite area;
    private final TableViewer viewer;

    ColumnTable(Composite parent, TableChoice choice, Runnable changed) {
        this.choice = choice;
        this.changed = changed;
        area = new Composite(parent, SWT.NONE);
        viewer = new TableViewer(area, SWT.FULL_SELECTION | SWT.SINGLE | SWT.BORDER);
        Table table = viewer.getTable();
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        TableColumnLayout layout = new TableColumnLayout();
        area.setLayout(layout);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(viewer);
        column(layout, Messages.Table_header, 3).setLabelProvider(new Text(TableChoice.Column::header, c -> c.header()));
        column(layout, Messages.Table_examples, 4).setLabelProvider(new Text(TableChoice.Column::examples, c -> c.examples()));
        TableViewerColumn holds = column(layout, Messages.Table_holds, 3);
        holds.setLabelProvider(new Text(c -> choice.use(c.place()).map(ColumnTable::label).orElse(Messages.Table_notUsed),
                c -> choice.use(c.place()).map(SheetColumn::meaning).map(Words::say).orElse(Messages.Table_notUsed_tip)));
        holds.setEditingSupport(new Uses());
        TableViewerColumn units = column(layout, Messages.Table_unit, 1);
        units.setLabelProvider(new Text(c -> choice.unit(c.place()), c -> Messages.Table_unit_tip));
        units.setEditingSupport(new Units());
        refresh();
    }

    private static String label(SheetColumn column) {
        return Words.say(column.label());
    }

    Control control() {
        return area;
    }

    void refresh() {
        viewer.setInput(choice.columns());
    }

    private TableViewerColumn column(TableColumnLayout layout, String title, int weight) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
        column.getColumn().setText(title);
        layout.setColumnData(column.getColumn(), new ColumnWeightData(weight, 60));
        return column;
    }

    /** Texts of a column of the table. */
    private static final class Text extends ColumnLabelProvider {
        private final Function<TableChoice.Column, String> text;
        private final Function<TableChoice.Column, String> tip;

        Text(Function<TableChoice.Column, String> text, Function<TableChoice.Column, String> tip) {
            this.text = text;
            this.tip = tip;
        }

        @Override
        public String getText(Object element) {
            return text.apply((TableChoice.Column) element);
        }

        @Override
        public String getToolTipText(Object element) {
            return tip.apply((TableChoice.Column) element);
        }
    }

    /** A choice among words in a cell. */
    private abstract class Choosing extends EditingSupport {
        Choosing() {
            super(viewer);
        }

        abstract List<String> words(int place);

        abstract String word(int place);

        abstract void choose(int place, int word);

        @Override
        protected CellEditor getCellEditor(Object element) {
            List<String> words = words(((TableChoice.Column) element).place());
            ComboBoxCellEditor editor = new ComboBoxCellEditor(viewer.getTable(), words.toArray(String[]::new), SWT.READ_ONLY);
            editor.setActivationStyle(ComboBoxCellEditor.DROP_DOWN_ON_MOUSE_ACTIVATION | ComboBoxCellEditor.DROP_DOWN_ON_KEY_ACTIVATION);
            return editor;
        }

        @Override
        protected boolean canEdit(Object element) {
            return words(((TableChoice.Column) element).place()).size() > 1;
        }

        @Override
        protected Object getValue(Object element) {
            int place = ((TableChoice.Column) element).place();
            return words(place).indexOf(word(place));
        }

        @Override
        protected void setValue(Object element, Object value) {
            int word = (Integer) value;
            if (word >= 0 && word != (Integer) getValue(element)) {
                choose(((TableChoice.Column) element).place(), word);
                viewer.refresh();
                changed.run();
            }
        }
    }

    /** What a column holds. */
    private final class Uses extends Choosing {

        private List<SheetColumn> columns() {
            return choice.made().kind().columns(choice.study());
        }

        @Override
        List<String> words(int place) {
            return Stream.concat(Stream.of(Messages.Table_notUsed), columns().stream().map(ColumnTable::label)).toList();
        }

        @Override
        String word(int place) {
            return choice.use(place).map(ColumnTable::label).orElse(Messages.Table_notUsed);
        }

        @Override
        void choose(int place, int word) {
            choice.use(place, word == 0 ? Optional.empty() : Optional.of(columns().get(word - 1)));
        }
    }

    /** In which unit. */
    private final class Units extends Choosing {

        @Override
        List<String> words(int place) {
            return choice.units(place);
        }

        @Override
        String word(int place) {
            return choice.unit(place);
        }

        @Override
        void choose(int place, int word) {
            String symbol = words(place).get(word);
            UnitSystem system = Stream.of(UnitSystem.values()).filter(s -> choice.use(place)
                    .map(c -> c.unit().symbol(s, StudyUnits.currency(choice.study())).equals(symbol)).orElse(false)).findFirst().orElseThrow();
            choice.system(place, system);
        }
    }
}

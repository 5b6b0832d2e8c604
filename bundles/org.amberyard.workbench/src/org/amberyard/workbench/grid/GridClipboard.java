package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.HTMLTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;

/** Carries blocks of cells between a grid and a spreadsheet. */
final class GridClipboard {

    private final Grid grid;

    GridClipboard(Grid grid) {
        this.grid = grid;
    }

    void copy(boolean withHeaders) {
        put(withHeaders, grid.model()::fullText, this::markup);
    }

    /** Copies the selected cells with figures that have no thousands separators, as forms ask for them. */
    void copyPlain() {
        put(!grid.selection().range().isSingle(), grid.model()::plainText,
                (row, column) -> TableMarkup.Cell.of(grid.model().plainText(row, column)));
    }

    private void put(boolean withHeaders, At<String> text, At<TableMarkup.Cell> markup) {
        String tabbed = TabbedText.write(block(withHeaders, h -> h, text));
        if (!tabbed.isEmpty()) {
            Clipboard clipboard = new Clipboard(grid.getDisplay());
            clipboard.setContents(new Object[] {tabbed, TableMarkup.write(block(withHeaders, TableMarkup.Cell::of, markup), withHeaders)},
                    new Transfer[] {TextTransfer.getInstance(), HTMLTransfer.getInstance()});
            clipboard.dispose();
        }
    }

    private <T> List<List<T>> block(boolean withHeaders, Function<String, T> header, At<T> cell) {
        CellRange range = grid.selection().range();
        GridModel model = grid.model();
        List<List<T>> block = new ArrayList<>();
        if (withHeaders) {
            block.add(cells(range, column -> header.apply(model.header(column))));
        }
        for (int row = range.top(); row <= Math.min(range.bottom(), model.rows() - 1); row++) {
            int at = row;
            block.add(cells(range, column -> cell.of(at, column)));
        }
        return block;
    }

    /** For word processors as it is shown, for spreadsheets with all digits. */
    private TableMarkup.Cell markup(int row, int column) {
        GridModel model = grid.model();
        return model.isFigure(row, column) ? new TableMarkup.Cell(model.text(row, column), PlainFigure.withPoint(model.fullText(row, column)))
                : TableMarkup.Cell.of(model.fullText(row, column));
    }

    /** Something of a cell. */
    private interface At<T> {
        T of(int row, int column);
    }

    private static <T> List<T> cells(CellRange range, IntFunction<T> cell) {
        return IntStream.rangeClosed(range.left(), range.right()).mapToObj(cell).toList();
    }

    void paste() {
        Clipboard clipboard = new Clipboard(grid.getDisplay());
        Object contents = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        if (contents instanceof String text && !text.isEmpty()) {
            pasteBlock(withoutHeaders(TabbedText.read(text)));
        }
    }

    /** A single text fills the whole selection; a block is entered from the first selected cell on, and the rows that it has got are selected. */
    private void pasteBlock(List<List<String>> block) {
        if (block.isEmpty()) {
            return;
        }
        CellRange range = grid.selection().range();
        boolean fills = block.size() == 1 && block.get(0).size() == 1 && !range.isSingle();
        List<List<String>> entered = fills ? repeated(block.get(0).get(0), range) : block;
        if (grid.enter(range.top(), range.left(), entered)) {
            int width = entered.stream().mapToInt(List::size).max().orElse(1);
            int bottom = Math.min(range.top() + entered.size(), grid.model().rows()) - 1;
            grid.selection().select(new CellRange(range.top(), range.left(), Math.max(range.top(), bottom), range.left() + width - 1));
        }
    }

    private static List<List<String>> repeated(String text, CellRange range) {
        List<String> line = IntStream.range(0, range.width()).mapToObj(i -> text).toList();
        return IntStream.range(0, range.height()).mapToObj(i -> line).toList();
    }

    /** A block that was copied with the headers of this table is entered without them. */
    private List<List<String>> withoutHeaders(List<List<String>> block) {
        List<String> headers = IntStream.range(0, grid.model().columns()).mapToObj(grid.model()::header).toList();
        boolean headed = block.size() > 1 && headers.containsAll(block.get(0));
        return headed ? block.subList(1, block.size()) : block;
    }

    void fillDown() {
        CellRange range = grid.selection().range();
        if (range.height() < 2) {
            return;
        }
        List<String> first = cells(range, column -> grid.model().fullText(range.top(), column));
        List<List<String>> block = IntStream.range(1, range.height()).mapToObj(i -> first).toList();
        grid.enter(range.top() + 1, range.left(), block);
    }
}

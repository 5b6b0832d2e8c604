package org.amberyard.workbench.grid;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.workbench.look.Fonts;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Where the cells of a grid lie. */
final class GridGeometry {

    static final int PADDING = 6;
    private static final int NARROWEST = 40;
    private static final int WIDEST = 300;
    /** Share of a table of one element that its labels take at most. */
    private static final double MOST_FOR_LABELS = 0.75;
    private static final double MOST_FOR_FROZEN = 0.55;
    private static final int SAMPLE_ROWS = 200;
    private static final int BORDER_REACH = 4;
    private static final int MOST_HEADER_LINES = 3;
    /** Height of what is left of a header without words: the line above the rows. */
    private static final int EDGE = 1;
    private static final List<String> NO_CHOICES = List.of();

    private final Grid grid;
    private final TextWidths texts = new TextWidths();
    private int[] widths = {};
    private boolean[] setByUser = {};
    private int headerHeight;
    private int rowHeight;
    private int textHeight;
    private int scrollX;
    private int topRow;

    GridGeometry(Grid grid) {
        this.grid = grid;
    }

    /** Fits the columns to their texts anew. */
    void measure() {
        GridModel model = grid.model();
        boolean sameColumns = widths.length == model.columns();
        int[] fitted = new int[model.columns()];
        GC gc = new GC(grid);
        try {
            gc.setFont(Fonts.TEXT.font());
            textHeight = gc.getFontMetrics().getHeight();
            rowHeight = textHeight + 6;
            for (int column = 0; column < fitted.length; column++) {
                boolean keep = sameColumns && setByUser[column];
                fitted[column] = keep ? widths[column] : fittedWidth(gc, model, column);
            }
            if (model.isCompact()) {
                evenOut(fitted, model.frozenColumns());
            }
            widths = fitted;
            stretchLast(model);
            leaveRoomToScroll(model, sameColumns);
            setByUser = sameColumns ? setByUser : new boolean[fitted.length];
            headerHeight = headerHeight(gc, model);
        } finally {
            gc.dispose();
        }
    }

    /** Columns that scroll are alike, so that the same width is the same everywhere. */
    private void evenOut(int[] fitted, int from) {
        int widest = Arrays.stream(fitted, Math.min(from, fitted.length), fitted.length).max().orElse(NARROWEST);
        Arrays.fill(fitted, Math.min(from, fitted.length), fitted.length, widest);
    }

    private void stretchLast(GridModel model) {
        if (model.stretchesLast() && widths.length > 0) {
            leaveRoomForValues();
            int others = Arrays.stream(widths, 0, widths.length - 1).sum();
            widths[widths.length - 1] = Math.max(NARROWEST, grid.getClientArea().width - others);
        }
    }

    /** The longest label must not push the values out of sight; it is shortened, its tip has it whole. */
    private void leaveRoomForValues() {
        int room = grid.getClientArea().width;
        boolean chosen = setByUser.length == widths.length && setByUser[0];
        if (room > 0 && !chosen) {
            widths[0] = Math.min(widths[0], Math.max(NARROWEST, (int) (MOST_FOR_LABELS * room)));
        }
    }

    /** Columns that stay must not leave too little room for those that scroll; of several, the widest gives way. */
    private void leaveRoomToScroll(GridModel model, boolean sameColumns) {
        int frozen = Math.min(model.frozenColumns(), widths.length);
        int room = grid.getClientArea().width;
        boolean chosen = sameColumns && IntStream.range(0, frozen).anyMatch(c -> setByUser[c]);
        if (frozen > 1 && room > 0 && !model.isCompact() && !chosen) {
            int most = Math.max(frozen * NARROWEST, (int) (MOST_FOR_FROZEN * room));
            while (Arrays.stream(widths, 0, frozen).sum() > most) {
                widths[widest(frozen)]--;
            }
        }
    }

    private int widest(int frozen) {
        return IntStream.range(0, frozen).boxed().max(Comparator.comparingInt(c -> widths[c])).orElseThrow();
    }

    private int fittedWidth(GC gc, GridModel model, int column) {
        int width = headerWidth(gc, model, model.header(column));
        for (int row = 0; row < Math.min(model.rows(), SAMPLE_ROWS); row++) {
            width = Math.max(width, texts.of(gc, model.text(row, column)));
        }
        for (String choice : model.isCompact() ? NO_CHOICES : model.commonChoices(column)) {
            width = Math.max(width, texts.of(gc, choice));
        }
        return Math.max(NARROWEST, Math.min(WIDEST, width + 2 * PADDING + 2));
    }

    /** Width at which a header needs no more than its lines. */
    private int headerWidth(GC gc, GridModel model, String header) {
        int longest = Arrays.stream(header.split(" ")).mapToInt(w -> texts.of(gc, w)).max().orElse(0);
        int width = longest;
        while (texts.lines(gc, header, width).size() > model.headerLines() && width < WIDEST) {
            width += PADDING;
        }
        return width;
    }

    private int headerHeight(GC gc, GridModel model) {
        if (!model.hasHeader()) {
            return EDGE;
        }
        int lines = 1;
        for (int column = 0; column < widths.length; column++) {
            int room = widths[column] - 2 * PADDING;
            lines = Math.max(lines, texts.lines(gc, model.header(column), room).size());
        }
        return Math.min(lines, MOST_HEADER_LINES) * textHeight + PADDING + 2;
    }

    TextWidths texts() {
        return texts;
    }

    int textHeight() {
        return textHeight;
    }

    int headerHeight() {
        return headerHeight;
    }

    int rowHeight() {
        return rowHeight;
    }

    int width(int column) {
        return widths[column];
    }

    void setWidth(int column, int width) {
        int frozen = grid.model().frozenColumns();
        boolean alike = grid.model().isCompact() && column >= frozen;
        for (int c = alike ? frozen : column; c < (alike ? widths.length : column + 1); c++) {
            widths[c] = Math.max(NARROWEST, width);
            setByUser[c] = true;
        }
    }

    int contentWidth() {
        return Arrays.stream(widths).sum();
    }

    int frozenWidth() {
        return Arrays.stream(widths, 0, Math.min(widths.length, grid.model().frozenColumns())).sum();
    }

    int scrollX() {
        return scrollX;
    }

    int topRow() {
        return topRow;
    }

    void scrollTo(int x, int row) {
        scrollX = Math.max(0, x);
        topRow = Math.max(0, row);
    }

    /** Rows that fit below the header. */
    int visibleRows() {
        return Math.max(1, (grid.getClientArea().height - headerHeight) / rowHeight);
    }

    int x(int column) {
        int x = Arrays.stream(widths, 0, column).sum();
        return column < grid.model().frozenColumns() ? x : x - scrollX;
    }

    int y(int row) {
        return headerHeight + (row - topRow) * rowHeight;
    }

    Rectangle cell(int row, int column) {
        return new Rectangle(x(column), y(row), widths[column], rowHeight);
    }

    /** Column at a place, or -1. */
    int columnAt(int x) {
        int frozen = frozenWidth();
        for (int column = 0; column < widths.length; column++) {
            boolean covered = column >= grid.model().frozenColumns() && x < frozen;
            if (!covered && x >= x(column) && x < x(column) + widths[column]) {
                return column;
            }
        }
        return -1;
    }

    /** Row at a place, or -1 for the header and the space below. */
    int rowAt(int y) {
        int row = topRow + (y - headerHeight) / rowHeight;
        return y < headerHeight || row >= grid.shownRows() ? -1 : row;
    }

    /** Column whose right border is near a place in the header, or anywhere where there is none; -1 for none. */
    int borderAt(Point place) {
        if (place.y < headerHeight || !grid.model().hasHeader()) {
            for (int column = 0; column < widths.length; column++) {
                if (Math.abs(x(column) + widths[column] - place.x) <= BORDER_REACH) {
                    return column;
                }
            }
        }
        return -1;
    }
}

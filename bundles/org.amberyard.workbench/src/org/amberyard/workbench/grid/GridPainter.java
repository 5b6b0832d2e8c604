package org.amberyard.workbench.grid;

import java.util.List;
import java.util.Optional;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/** Paints a grid: cells, header, marks, selection. */
final class GridPainter {

    private static final int CORNER = 6;
    private static final int EDGE = 3;

    private final Grid grid;
    private final GridGeometry geometry;

    GridPainter(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
    }

    void paint(GC gc) {
        Rectangle area = grid.getClientArea();
        gc.setFont(Fonts.TEXT.font());
        gc.setBackground(Palette.PAPER.color());
        gc.fillRectangle(area);
        int frozen = grid.model().frozenColumns();
        int frozenWidth = geometry.frozenWidth();
        paintColumns(gc, frozen, grid.model().columns(),
                new Rectangle(frozenWidth, 0, Math.max(0, area.width - frozenWidth), area.height));
        paintColumns(gc, 0, frozen, new Rectangle(0, 0, Math.min(frozenWidth, area.width), area.height));
        gc.setClipping((Rectangle) null);
        paintEdges(gc, area, frozenWidth);
    }

    private void paintColumns(GC gc, int from, int to, Rectangle clip) {
        gc.setClipping(clip);
        int lastRow = Math.min(grid.shownRows(), geometry.topRow() + geometry.visibleRows() + 2);
        for (int column = from; column < to; column++) {
            int x = geometry.x(column);
            if (x + geometry.width(column) > clip.x && x < clip.x + clip.width) {
                paintLines(gc, column, lastRow);
                for (int row = geometry.topRow(); row < lastRow; row++) {
                    paintCell(gc, row, column);
                }
                paintHeader(gc, column);
            }
        }
        paintFocus(gc, from, to);
    }

    /** The lines of a column; drawn as filled strips, which the platform does much faster than lines. */
    private void paintLines(GC gc, int column, int lastRow) {
        int x = geometry.x(column);
        int width = geometry.width(column);
        int top = geometry.headerHeight();
        gc.setBackground(Palette.HAIRLINE.color());
        for (int row = geometry.topRow(); row < lastRow; row++) {
            gc.fillRectangle(x, geometry.y(row) + geometry.rowHeight() - 1, width, 1);
        }
        gc.fillRectangle(x + width - 1, top, 1, Math.max(0, geometry.y(lastRow) - top));
    }

    private void paintEdges(GC gc, Rectangle area, int frozenWidth) {
        gc.setForeground(Palette.RULE.color());
        int header = geometry.headerHeight() - 1;
        gc.drawLine(0, header, Math.min(area.width, geometry.contentWidth() - geometry.scrollX()) - 1, header);
        if (frozenWidth > 0) {
            int bottom = Math.min(area.height, geometry.y(grid.shownRows()));
            gc.drawLine(frozenWidth - 1, 0, frozenWidth - 1, bottom);
        }
    }

    private void paintHeader(GC gc, int column) {
        Rectangle cell = new Rectangle(geometry.x(column), 0, geometry.width(column), geometry.headerHeight());
        gc.setBackground(Palette.BAND.color());
        gc.fillRectangle(cell);
        gc.setForeground(Palette.HAIRLINE.color());
        gc.drawLine(cell.x + cell.width - 1, 2, cell.x + cell.width - 1, cell.height - 3);
        gc.setForeground(Palette.MUTED.color());
        int room = cell.width - 2 * GridGeometry.PADDING;
        List<String> lines = geometry.texts().lines(gc, grid.model().header(column), room);
        int lineHeight = geometry.textHeight();
        int y = cell.height - GridGeometry.PADDING / 2 - 1 - lines.size() * lineHeight;
        boolean figures = grid.model().rows() > 0 && grid.model().isFigure(0, column);
        for (String line : lines) {
            String shown = geometry.texts().shortened(gc, line, room);
            int x = figures ? cell.x + cell.width - GridGeometry.PADDING - geometry.texts().of(gc, shown)
                    : cell.x + GridGeometry.PADDING;
            gc.drawText(shown, x, y, true);
            y += lineHeight;
        }
        paintSortMark(gc, column, cell);
    }

    private void paintSortMark(GC gc, int column, Rectangle cell) {
        if (grid.sortedColumn() != column) {
            return;
        }
        int x = cell.x + cell.width / 2;
        int tip = grid.isSortedUp() ? 2 : 6;
        int base = grid.isSortedUp() ? 6 : 2;
        gc.setBackground(Palette.AMBER.color());
        gc.fillPolygon(new int[] {x - 4, base, x + 4, base, x, tip});
    }

    private void paintCell(GC gc, int row, int column) {
        Rectangle cell = geometry.cell(row, column);
        boolean entryRow = row >= grid.model().rows();
        Optional<CellMark> mark = entryRow ? Optional.empty() : grid.model().mark(row, column);
        Palette ground = ground(row, column, entryRow, mark);
        if (ground != Palette.PAPER) {
            gc.setBackground(ground.color());
            gc.fillRectangle(cell.x, cell.y, cell.width - 1, cell.height - 1);
        }
        mark.ifPresent(m -> paintMark(gc, cell, m));
        if (!entryRow && !grid.model().note(row, column).isEmpty()) {
            paintNote(gc, cell);
        }
        if (!entryRow) {
            paintEdge(gc, grid.model().look(row, column).edge(), cell);
            paintText(gc, row, column, cell);
        } else if (column == 0) {
            gc.setForeground(Palette.RULE.color());
            gc.drawText("+", cell.x + GridGeometry.PADDING, textY(cell), true);
        }
    }

    private Palette ground(int row, int column, boolean entryRow, Optional<CellMark> mark) {
        CellRange range = grid.selection().range();
        if (grid.isFocusControl() && !range.isSingle() && range.contains(row, column)) {
            return Palette.AMBER_WASH;
        }
        if (mark.isPresent() && mark.get().level() != CellMark.Level.NOTICE) {
            return mark.get().level() == CellMark.Level.ERROR ? Palette.ERROR_WASH : Palette.WARNING_WASH;
        }
        if (grid.isRowMarked() && row == grid.selection().row() && !entryRow) {
            return Palette.AMBER_WASH;
        }
        return entryRow ? Palette.PAPER : grid.model().look(row, column).ground();
    }

    private void paintMark(GC gc, Rectangle cell, CellMark mark) {
        gc.setBackground(switch (mark.level()) {
            case ERROR -> Palette.ERROR.color();
            case WARNING -> Palette.WARNING.color();
            case NOTICE -> Palette.NOTICE.color();
        });
        int right = cell.x + cell.width - 1;
        gc.fillPolygon(new int[] {right - CORNER, cell.y, right, cell.y, right, cell.y + CORNER});
    }

    /** Findings have the upper corner, notes the lower one. */
    private static void paintNote(GC gc, Rectangle cell) {
        gc.setBackground(Palette.AMBER.color());
        int right = cell.x + cell.width - 1;
        int bottom = cell.y + cell.height - 1;
        gc.fillPolygon(new int[] {right - CORNER, bottom, right, bottom, right, bottom - CORNER});
    }

    private static void paintEdge(GC gc, Palette edge, Rectangle cell) {
        if (edge != null) {
            gc.setBackground(edge.color());
            gc.fillRectangle(cell.x, cell.y, EDGE, cell.height - 1);
        }
    }

    private void paintText(GC gc, int row, int column, Rectangle cell) {
        GridModel model = grid.model();
        gc.setForeground((grid.isFaded() ? Palette.FADED : model.look(row, column).ink()).color());
        int room = cell.width - 2 * GridGeometry.PADDING;
        String shown = geometry.texts().shortened(gc, model.text(row, column), room);
        int x = model.isFigure(row, column) ? cell.x + cell.width - GridGeometry.PADDING - 1 - geometry.texts().of(gc, shown)
                : cell.x + GridGeometry.PADDING;
        gc.drawText(shown, x, textY(cell), true);
    }

    private int textY(Rectangle cell) {
        return cell.y + (cell.height - 1 - geometry.textHeight()) / 2;
    }

    private void paintFocus(GC gc, int from, int to) {
        GridSelection selection = grid.selection();
        boolean here = selection.column() >= from && selection.column() < to;
        if (!here || selection.row() < geometry.topRow() || grid.shownRows() == 0) {
            return;
        }
        Rectangle cell = geometry.cell(selection.row(), selection.column());
        boolean active = grid.isFocusControl() || grid.entry().isOpen();
        gc.setForeground(active ? Palette.AMBER.color() : Palette.RULE.color());
        gc.setLineWidth(active ? 2 : 1);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.drawRectangle(cell.x, cell.y, cell.width - 1, cell.height - 1);
        gc.setLineWidth(1);
    }
}

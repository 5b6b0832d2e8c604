package org.amberyard.workbench.grid;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** The texts that a cell can take, below the cell; typing narrows them, the arrow keys pick one. */
final class ChoiceList {

    private static final int MOST_SHOWN = 10;

    private final Grid grid;
    private final Consumer<String> onChoice;
    private List<String> offered = List.of();
    private Rectangle cell;
    private Shell shell;
    private Table table;

    ChoiceList(Grid grid, Consumer<String> onChoice) {
        this.grid = grid;
        this.onChoice = onChoice;
    }

    /** @param around the cell, on the screen; the list stands below it or, where the screen ends, above it */
    void open(List<String> texts, Rectangle around, String current) {
        close();
        offered = texts;
        cell = around;
        shell = new Shell(grid.getShell(), SWT.NO_TRIM | SWT.ON_TOP);
        shell.setLayout(new FillLayout());
        shell.setBackground(Palette.RULE.color());
        table = new Table(shell, SWT.SINGLE | SWT.FULL_SELECTION | SWT.NO_FOCUS);
        table.setFont(Fonts.TEXT.font());
        table.setBackground(Palette.PAPER.color());
        table.addListener(SWT.MouseUp, e -> clicked());
        fill(texts);
        if (current != null) {
            table.setSelection(texts.indexOf(current));
        }
        fit(cell.width);
        shell.setVisible(true);
    }

    private void fit(int width) {
        int rows = Math.min(MOST_SHOWN, Math.max(1, table.getItemCount()));
        int natural = table.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        Point size = new Point(Math.max(width, natural), rows * table.getItemHeight() + 4);
        shell.setBounds(placed(cell, size, grid.getMonitor().getClientArea()));
    }

    /**
     * Where a list of a size stands at a cell so that the screen has all of it: below the cell or, where the screen ends, above it; where
     * there is room on neither side, on the wider one and as high as that is, and the list scrolls.
     */
    static Rectangle placed(Rectangle cell, Point size, Rectangle screen) {
        int bottom = cell.y + cell.height;
        int roomBelow = screen.y + screen.height - bottom;
        int roomAbove = cell.y - screen.y;
        boolean above = size.y > roomBelow && roomAbove > roomBelow;
        int height = Math.min(size.y, above ? roomAbove : roomBelow);
        int width = Math.min(size.x, screen.width);
        int x = Math.max(screen.x, Math.min(cell.x, screen.x + screen.width - width));
        return new Rectangle(x, above ? cell.y - height : bottom, width, height);
    }

    private void fill(List<String> texts) {
        table.removeAll();
        for (String text : texts) {
            new TableItem(table, SWT.NONE).setText(text);
        }
    }

    private void clicked() {
        if (table.getSelectionIndex() >= 0) {
            onChoice.accept(table.getSelection()[0].getText());
        }
    }

    boolean isOpen() {
        return shell != null;
    }

    boolean hasFocus() {
        return isOpen() && grid.getDisplay().getActiveShell() == shell;
    }

    /** Keeps the choices that hold a typed text and picks the best of them. */
    void narrow(String typed) {
        if (!isOpen() || typed == null) {
            return;
        }
        String sought = typed.strip().toLowerCase(Locale.ROOT);
        List<String> kept = offered.stream().filter(t -> t.toLowerCase(Locale.ROOT).contains(sought)).toList();
        fill(kept);
        int best = 0;
        for (int i = kept.size() - 1; i >= 0; i--) {
            best = kept.get(i).toLowerCase(Locale.ROOT).startsWith(sought) ? i : best;
        }
        if (!kept.isEmpty() && !sought.isEmpty()) {
            table.setSelection(best);
        }
        fit(shell.getSize().x);
    }

    void move(int step) {
        if (table.getItemCount() > 0) {
            int next = Math.max(0, Math.min(table.getItemCount() - 1, table.getSelectionIndex() + step));
            table.setSelection(next);
            table.showSelection();
        }
    }

    /** The picked choice in place of a typed text; the text itself when nothing is picked. */
    String chosen(String typed) {
        boolean picked = isOpen() && table.getSelectionIndex() >= 0;
        return picked && !(typed.isBlank() && offered.contains("")) ? table.getSelection()[0].getText() : typed;
    }

    void close() {
        if (isOpen()) {
            shell.dispose();
            shell = null;
            table = null;
        }
    }
}

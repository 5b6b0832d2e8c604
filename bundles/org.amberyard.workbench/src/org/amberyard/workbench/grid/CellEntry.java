package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;

/**
 * The text being typed into a cell. It stays open, with its text, until the cell takes it or the user gives up.
 */
public final class CellEntry {

    private final Grid grid;
    private final GridGeometry geometry;
    private final RefusalHint hint;
    private final ChoiceList choices;
    private final List<Runnable> listeners = new ArrayList<>();
    private StyledText text;
    private Object subject;
    private int row;
    private int column;
    /** True after F2 or a double click: the arrow keys move within the text. */
    private boolean withinText;

    CellEntry(Grid grid, GridGeometry geometry) {
        this.grid = grid;
        this.geometry = geometry;
        this.hint = new RefusalHint(grid);
        this.choices = new ChoiceList(grid, this::choose);
    }

    /** True while a cell is being edited. */
    public boolean isOpen() {
        return text != null;
    }

    /** True while closing would lose something: a text other than the cell's own has been typed. */
    public boolean isChanged() {
        return isOpen() && !isUnchanged(text.getText());
    }

    /** Calls the listener when an entry opens, changes or closes. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** True for the text being typed and the list of choices below it. */
    public boolean owns(Control control) {
        return control != null && (control == text || control.getShell() != grid.getShell());
    }

    /** What has been typed so far. */
    public String typed() {
        return text == null ? "" : text.getText();
    }

    /** Message of the refusal on show, or blank. */
    public String refusal() {
        return hint.message();
    }

    /** Opens the focus cell, with a first typed text in place of its own when there is one. */
    void open(String typed) {
        row = grid.selection().row();
        column = grid.selection().column();
        if (isOpen() || !grid.model().isEditable(row, column)) {
            return;
        }
        withinText = typed == null;
        subject = grid.model().subject(row, column);
        createText();
        String own = row < grid.model().rows() ? grid.model().fullText(row, column) : "";
        text.setText(typed == null ? own : typed);
        text.setCaretOffset(text.getCharCount());
        if (typed == null) {
            text.selectAll();
        }
        tell();
        place();
        text.setFocus();
        List<String> offered = grid.model().choices(row, column);
        if (!offered.isEmpty()) {
            choices.open(offered, grid.getDisplay().map(grid, null, geometry.cell(row, column)), typed == null ? own : null);
            choices.narrow(typed);
        }
    }

    private void createText() {
        text = new StyledText(grid, SWT.SINGLE);
        text.setFont(Fonts.TEXT.font());
        text.setBackground(Palette.PAPER.color());
        text.setForeground(Palette.INK.color());
        text.setMargins(GridGeometry.PADDING - 2, 1, GridGeometry.PADDING - 2, 0);
        text.setAlignment(grid.model().isFigure(row, column) ? SWT.RIGHT : SWT.LEFT);
        text.addListener(SWT.Traverse, this::traversed);
        text.addVerifyKeyListener(e -> e.doit = !arrow(e.keyCode, e.stateMask));
        text.addListener(SWT.Modify, e -> edited());
        text.addListener(SWT.FocusOut, e -> focusLost());
    }

    private void edited() {
        hint.hide();
        choices.narrow(text.getText());
        tell();
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    private boolean isUnchanged(String entered) {
        return row < grid.model().rows() ? entered.equals(grid.model().fullText(row, column)) : entered.isBlank();
    }

    /** Keeps the entry over its cell when the grid scrolls or grows. */
    void place() {
        if (isOpen()) {
            Rectangle cell = geometry.cell(row, column);
            text.setBounds(cell.x + 1, cell.y + 1, cell.width - 3, cell.height - 3);
            hint.place(cell);
        }
    }

    private void traversed(Event event) {
        boolean shift = (event.stateMask & SWT.SHIFT) != 0;
        switch (event.detail) {
            case SWT.TRAVERSE_ESCAPE -> cancel();
            case SWT.TRAVERSE_RETURN -> commit(() -> keys().goOnByEnter(shift ? -1 : 1));
            case SWT.TRAVERSE_TAB_NEXT -> commit(() -> keys().moveByTab(1));
            case SWT.TRAVERSE_TAB_PREVIOUS -> commit(() -> keys().moveByTab(-1));
            default -> {
                return;
            }
        }
        event.doit = false;
        event.detail = SWT.TRAVERSE_NONE;
    }

    private GridKeys keys() {
        return grid.keys();
    }

    /** Moves in the list of choices or, after typing, to the next cell; answers whether the key was used up. */
    private boolean arrow(int keyCode, int stateMask) {
        if ((stateMask & SWT.MODIFIER_MASK) != 0) {
            return false;
        }
        int down = keyCode == SWT.ARROW_DOWN ? 1 : keyCode == SWT.ARROW_UP ? -1 : 0;
        int right = keyCode == SWT.ARROW_RIGHT ? 1 : keyCode == SWT.ARROW_LEFT ? -1 : 0;
        if (down != 0 && choices.isOpen()) {
            choices.move(down);
            return true;
        }
        if (down != 0 || right != 0 && !withinText) {
            commit(() -> keys().moveBy(down, right, false));
            return true;
        }
        return false;
    }

    private void choose(String choice) {
        text.setText(choice);
        commit(() -> grid.setFocus());
    }

    private void commit(Runnable then) {
        if (close()) {
            grid.setFocus();
            then.run();
        }
    }

    /** Enters what has been typed; false when the cell refuses it and stays open. */
    public boolean close() {
        if (!isOpen()) {
            return true;
        }
        String entered = choices.chosen(text.getText());
        if (!stands()) {
            hint.show(Messages.Entry_cellGone, geometry.cell(row, column));
            return false;
        }
        if (isUnchanged(entered)) {
            cancel();
            return true;
        }
        try {
            grid.model().put(row, column, List.of(List.of(entered)));
        } catch (CellRefusal refusal) {
            hint.show(refusal.getMessage(), geometry.cell(row, column));
            grid.tellRefusal(refusal);
            return false;
        }
        cancel();
        grid.refresh();
        return true;
    }

    /** The table may have changed under the entry: then its text belongs to no cell on show. */
    private boolean stands() {
        boolean within = row < grid.shownRows() && column < grid.model().columns();
        return within && Objects.equals(subject, grid.model().subject(row, column));
    }

    /** Closes without entering. */
    public void cancel() {
        if (!isOpen()) {
            return;
        }
        StyledText closing = text;
        text = null;
        boolean hadFocus = closing.isFocusControl();
        choices.close();
        hint.hide();
        closing.dispose();
        grid.tellRefusal(null);
        if (hadFocus) {
            grid.setFocus();
        }
        grid.redraw();
        tell();
    }

    /** The focus may have gone to the list of choices, or to another window and come back; look again later. */
    private void focusLost() {
        StyledText left = text;
        grid.getDisplay().asyncExec(() -> {
            boolean still = left != null && left == text && !left.isDisposed();
            if (still && !left.isFocusControl() && grid.getDisplay().getFocusControl() != null && !choices.hasFocus()) {
                close();
            }
        });
    }
}

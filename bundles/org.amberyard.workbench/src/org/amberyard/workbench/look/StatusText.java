package org.amberyard.workbench.look;

import java.util.Arrays;
import java.util.Optional;
import org.eclipse.jface.action.StatusLineManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/**
 * The text of the status bar as one that can be selected and copied: from a click on it, or the command for it, until something else has
 * the focus. Without either it is no stop of the Tab key and looks as it always does.
 */
public final class StatusText {
    private static final String KEY = StatusText.class.getName();

    private final StatusLineManager bar;
    private CLabel label;
    private Text text;
    private Control before;

    private StatusText(StatusLineManager bar) {
        this.bar = bar;
    }

    /** Makes the text of a status bar selectable in its window, once the bar is there. */
    public static void follow(StatusLineManager bar, Shell window) {
        StatusText made = new StatusText(bar);
        window.setData(KEY, made);
        window.getDisplay().asyncExec(made::find);
    }

    /** That of a window. */
    public static Optional<StatusText> of(Shell window) {
        return Optional.ofNullable((StatusText) window.getData(KEY));
    }

    /** Looks for what shows the text, as long as it has not been found. */
    private void find() {
        if (label == null && bar.getControl() instanceof Composite area && !area.isDisposed()) {
            Arrays.stream(area.getChildren()).filter(CLabel.class::isInstance).map(CLabel.class::cast).findFirst().ifPresent(found -> {
                label = found;
                label.setCursor(label.getDisplay().getSystemCursor(SWT.CURSOR_IBEAM));
                label.addListener(SWT.MouseDown, e -> select());
            });
        }
    }

    /** Selects what the status bar says, to be copied or selected otherwise; nothing where it says nothing. */
    public void select() {
        find();
        if (label == null || text != null || label.getText() == null || label.getText().isBlank()) {
            return;
        }
        before = label.getDisplay().getFocusControl();
        text = new Text(label, SWT.READ_ONLY | SWT.SINGLE);
        text.setText(label.getText());
        text.setFont(label.getFont());
        text.setBackground(label.getBackground());
        text.setForeground(label.getForeground());
        Rectangle area = label.getClientArea();
        int height = Math.min(area.height, text.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
        text.setBounds(area.x, area.y + (area.height - height) / 2, area.width, height);
        text.addListener(SWT.FocusOut, e -> leave());
        text.addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.ESC) {
                goBack();
            }
        });
        text.setFocus();
        text.selectAll();
    }

    private void goBack() {
        if (before != null && !before.isDisposed()) {
            before.setFocus();
        }
        leave();
    }

    private void leave() {
        Text left = text;
        text = null;
        if (left != null && !label.isDisposed()) {
            // Not while it tells that its focus goes.
            label.getDisplay().asyncExec(left::dispose);
        }
    }
}

package org.amberyard.workbench.look;

import java.util.Arrays;
import java.util.Optional;
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

    private final CLabel label;
    private Text text;
    private Control before;

    private StatusText(CLabel label) {
        this.label = label;
        label.setCursor(label.getDisplay().getSystemCursor(SWT.CURSOR_IBEAM));
        label.addListener(SWT.MouseDown, e -> select());
    }

    /** Makes the text of a status bar selectable in its window. */
    public static void follow(Composite statusBar, Shell window) {
        Arrays.stream(statusBar.getChildren()).filter(CLabel.class::isInstance).map(CLabel.class::cast).findFirst()
                .ifPresent(label -> window.setData(KEY, new StatusText(label)));
    }

    /** That of a window. */
    public static Optional<StatusText> of(Shell window) {
        return Optional.ofNullable((StatusText) window.getData(KEY));
    }

    /** Selects what the status bar says, to be copied or selected otherwise; nothing where it says nothing. */
    public void select() {
        if (text != null || label.getText() == null || label.getText().isBlank()) {
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
        if (left != null) {
            // Not while it tells that its focus goes.
            label.getDisplay().asyncExec(left::dispose);
        }
    }
}

package org.amberyard.workbench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** Types with the events of a real keyboard, which reach whatever has the focus. */
final class Keyboard {

    private final Display display;

    Keyboard(Display display) {
        this.display = display;
    }

    /** Types letters, digits and signs that need no Shift. */
    void type(String text) {
        text.chars().forEach(c -> press((char) c, 0));
    }

    /** Presses and releases a key such as {@link SWT#F2}. */
    void press(int keyCode) {
        press('\0', keyCode);
    }

    /** Presses a key while another, such as {@link SWT#CTRL}, is held. */
    void pressWith(int modifier, char key) {
        post(SWT.KeyDown, '\0', modifier);
        press(key, 0);
        post(SWT.KeyUp, '\0', modifier);
        settle();
    }

    /** Presses a key such as {@link SWT#ARROW_LEFT} while another is held. */
    void pressWith(int modifier, int keyCode) {
        post(SWT.KeyDown, '\0', modifier);
        press('\0', keyCode);
        post(SWT.KeyUp, '\0', modifier);
        settle();
    }

    private void press(char character, int keyCode) {
        post(SWT.KeyDown, character, keyCode);
        post(SWT.KeyUp, character, keyCode);
        settle();
    }

    private void post(int type, char character, int keyCode) {
        Event event = new Event();
        event.type = type;
        event.character = character;
        event.keyCode = keyCode;
        display.syncExec(() -> {
            if (!display.post(event)) {
                throw new AssertionError("The display does not take keyboard events");
            }
        });
    }

    /** The event goes by way of the window system; give it time to come back, and the window to act on it. */
    private void settle() {
        OpenStudy.pause(30);
        display.syncExec(() -> { });
    }
}

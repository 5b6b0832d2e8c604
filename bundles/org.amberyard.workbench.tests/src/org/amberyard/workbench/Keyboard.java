package org.amberyard.workbench;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;

/** Types with the events of a real keyboard, which reach whatever has the focus. */
final class Keyboard {

    private final PostedEvents events;

    Keyboard(Display display) {
        this.events = new PostedEvents(display);
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
        hold(modifier, key, 0);
    }

    /** Presses a key such as {@link SWT#ARROW_LEFT} while another is held. */
    void pressWith(int modifier, int keyCode) {
        hold(modifier, '\0', keyCode);
    }

    /** Presses a key while two others are held. */
    void hold(int first, int second, char key) {
        events.post(key(SWT.KeyDown, '\0', first));
        hold(second, key, 0);
        events.postAndAwait(key(SWT.KeyUp, '\0', first));
    }

    private void hold(int modifier, char character, int keyCode) {
        events.post(key(SWT.KeyDown, '\0', modifier));
        press(character, keyCode);
        events.postAndAwait(key(SWT.KeyUp, '\0', modifier));
    }

    /** A key that is bound to a command is not seen when it goes down, but when it comes up. */
    private void press(char character, int keyCode) {
        events.post(key(SWT.KeyDown, character, keyCode));
        events.postAndAwait(key(SWT.KeyUp, character, keyCode));
    }

    private static Event key(int type, char character, int keyCode) {
        Event event = new Event();
        event.type = type;
        event.character = character;
        event.keyCode = keyCode;
        return event;
    }
}

package org.amberyard.workbench.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.junit.jupiter.api.Test;

class EventQueueTest {
    private static EventQueue failing(int code) {
        return new EventQueue(told -> {
            throw new SWTException(code);
        });
    }

    @Test
    void aDisplayThatHasJustGoneIsNoFault() {
        failing(SWT.ERROR_DEVICE_DISPOSED).later(() -> {});
        assertThrows(SWTException.class, () -> failing(SWT.ERROR_THREAD_INVALID_ACCESS).later(() -> {}));
        List<Runnable> queue = new ArrayList<>();
        Runnable told = () -> {};
        new EventQueue(queue::add).later(told);
        assertEquals(List.of(told), queue);
    }
}

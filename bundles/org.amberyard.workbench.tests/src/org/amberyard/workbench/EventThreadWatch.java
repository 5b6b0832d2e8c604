package org.amberyard.workbench;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.swt.widgets.Display;

/** Asks the event thread for an answer again and again and keeps the longest time that one took. */
final class EventThreadWatch {

    private static final int INTERVAL_MS = 2;

    private final Display display;
    private final AtomicLong longestNanos = new AtomicLong();
    private final Thread thread = new Thread(this::watch, "event thread watch");
    private volatile boolean stopped;

    EventThreadWatch(Display display) {
        this.display = display;
        thread.setDaemon(true);
        thread.start();
    }

    private void watch() {
        while (!stopped) {
            CountDownLatch answered = new CountDownLatch(1);
            long asked = System.nanoTime();
            display.asyncExec(() -> {
                longestNanos.accumulateAndGet(System.nanoTime() - asked, Math::max);
                answered.countDown();
            });
            try {
                answered.await();
                Thread.sleep(INTERVAL_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    /** Stops watching; the longest answer in milliseconds. */
    long stop() {
        stopped = true;
        return longestNanos.get() / 1_000_000;
    }
}

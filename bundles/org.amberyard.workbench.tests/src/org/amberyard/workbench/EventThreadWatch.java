package org.amberyard.workbench;

import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.swt.widgets.Display;

/**
 * Asks the event thread for an answer again and again and keeps the longest time that it needed for one: time at work, waiting
 * for other threads of the program, or stopped to clear the memory. Time in which other programs had the processor does not
 * count, so that a busy machine changes nothing.
 */
final class EventThreadWatch {

    private static final int INTERVAL_MS = 2;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final Display display;
    private final long eventThread;
    private final AtomicLong longestNanos = new AtomicLong();
    private final Thread thread = new Thread(this::watch, "event thread watch");
    private volatile boolean stopped;

    EventThreadWatch(Display display) {
        this.display = display;
        this.eventThread = display.getThread().getId();
        THREADS.setThreadContentionMonitoringEnabled(true);
        thread.setDaemon(true);
        thread.start();
    }

    private void watch() {
        while (!stopped) {
            CountDownLatch answered = new CountDownLatch(1);
            long asked = neededNanos();
            display.asyncExec(() -> {
                longestNanos.accumulateAndGet(neededNanos() - asked, Math::max);
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

    private long neededNanos() {
        ThreadInfo info = THREADS.getThreadInfo(eventThread);
        long stoppedMs = ManagementFactory.getGarbageCollectorMXBeans().stream()
                .mapToLong(GarbageCollectorMXBean::getCollectionTime).sum();
        return THREADS.getThreadCpuTime(eventThread)
                + TimeUnit.MILLISECONDS.toNanos(info.getBlockedTime() + info.getWaitedTime() + stoppedMs);
    }

    /** Stops watching; the longest answer in milliseconds. */
    long stop() {
        stopped = true;
        return TimeUnit.NANOSECONDS.toMillis(longestNanos.get());
    }
}

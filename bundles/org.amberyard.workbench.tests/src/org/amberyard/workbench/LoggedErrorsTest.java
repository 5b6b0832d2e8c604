package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.extension.TestExecutionExceptionHandler;

/** A test during which the program goes wrong fails, even where the test itself looks at something else. */
@ExtendWith(WorkbenchExtension.class)
class LoggedErrorsTest {

    private static final ILog LOG = ILog.of(LoggedErrorsTest.class);

    @RegisterExtension
    private final MustFail outcome = new MustFail();

    /** Turns the outcome of a test round: it passes only when it fails for the reason that it names. */
    private static final class MustFail implements TestExecutionExceptionHandler, AfterTestExecutionCallback {
        private String reason;
        private Throwable failure;

        void because(String expected) {
            reason = expected;
        }

        @Override
        public void handleTestExecutionException(ExtensionContext context, Throwable thrown) throws Throwable {
            if (reason == null) {
                throw thrown;
            }
            failure = thrown;
        }

        @Override
        public void afterTestExecution(ExtensionContext context) {
            if (reason != null) {
                assertTrue(failure != null && said().stream().anyMatch(reason::equals), () -> "Failed by " + failure);
            }
        }

        private List<String> said() {
            return Arrays.stream(failure.getSuppressed()).map(Throwable::getMessage).toList();
        }
    }

    @Test
    void anExceptionOnTheEventThreadFailsTheTest(Display display) {
        outcome.because("Broken while painting");
        display.asyncExec(() -> {
            throw new IllegalStateException("Broken while painting");
        });
    }

    @Test
    void anErrorLoggedInTheBackgroundFailsTheTest() throws InterruptedException {
        outcome.because("Broken while computing");
        Job job = Job.createSystem("Breaks", (ICoreRunnable) monitor -> LOG.error("An error",
                new IllegalStateException("Broken while computing")));
        job.schedule();
        job.join();
    }

    @Test
    void anErrorIsToldBesideTheFailureOfTheTestItself() {
        outcome.because("Broken before");
        LOG.error("An error", new IllegalStateException("Broken before"));
        throw new AssertionError("What the test looks at");
    }

    @Test
    void anErrorThatTheTestTakesIsExpected(LoggedErrors errors) {
        LOG.error("Expected");

        assertEquals(List.of("Expected"), errors.take().stream().map(IStatus::getMessage).toList());
    }

    @Test
    void aWarningFailsNothing(LoggedErrors errors) {
        LOG.warn("A folder takes no files");

        assertEquals(List.of(), errors.take());
    }
}

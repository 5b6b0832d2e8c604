package org.amberyard.workbench;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.widgets.Shell;

/** Tells on the console how long the program took to start, where {@code -Damberyard.startup=true} asks for it. */
final class StartupTime {
    private static final String ASKED = "amberyard.startup";

    private boolean told;

    private StartupTime() {
    }

    /** Tells when the window is open, and when the first results are known. */
    static void tell(Shell shell) {
        if (Boolean.getBoolean(ASKED)) {
            say("window");
            StartupTime time = new StartupTime();
            ActiveSession.here().follow(shell, time::look);
        }
    }

    private void look(Optional<StudySession> session) {
        if (!told && session.filter(s -> s.evaluation().phase() == Evaluation.Phase.CURRENT).isPresent()) {
            told = true;
            say("results");
        }
    }

    private static void say(String what) {
        ProcessHandle.current().info().startInstant()
                .ifPresent(start -> System.out.println("start to " + what + ": " + Duration.between(start, Instant.now()).toMillis() + " ms"));
    }
}

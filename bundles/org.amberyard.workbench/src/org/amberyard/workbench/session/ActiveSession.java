package org.amberyard.workbench.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;

/** The study whose editor was last in use; views show this one. */
public final class ActiveSession {

    private static final ActiveSession INSTANCE = new ActiveSession();

    private final List<Consumer<Optional<StudySession>>> followers = new ArrayList<>();
    private final SessionListener relay = new SessionListener() {
        @Override
        public void studyChanged(StudySession session) {
            tell();
        }

        @Override
        public void evaluationChanged(StudySession session) {
            tell();
        }
    };
    private StudySession session;

    private ActiveSession() {
    }

    /** The study in use, if one is open. */
    public static Optional<StudySession> get() {
        return Optional.ofNullable(INSTANCE.session);
    }

    /** Makes a study the one in use; null when the last one has been closed. */
    public static void set(StudySession session) {
        if (session != INSTANCE.session) {
            if (INSTANCE.session != null) {
                INSTANCE.session.removeListener(INSTANCE.relay);
            }
            INSTANCE.session = session;
            if (session != null) {
                session.addListener(INSTANCE.relay);
            }
            INSTANCE.tell();
        }
    }

    /**
     * Calls the follower now and whenever the study in use, its content or its results change, as long as a control
     * lives.
     */
    public static void follow(Control control, Consumer<Optional<StudySession>> follower) {
        INSTANCE.followers.add(follower);
        control.addListener(SWT.Dispose, e -> INSTANCE.followers.remove(follower));
        follower.accept(get());
    }

    private void tell() {
        List.copyOf(followers).forEach(f -> f.accept(get()));
    }
}

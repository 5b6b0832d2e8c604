package org.amberyard.workbench.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;

/** The study whose editor was last in use; views show this one. A service of the workbench, used on the event thread. */
public final class ActiveSession {

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

        @Override
        public void fileChanged(StudySession session) {
            tell();
        }

        @Override
        public void whatIfChanged(StudySession session) {
            tell();
        }

        @Override
        public void choiceChanged(StudySession session) {
            tell();
        }
    };
    private StudySession session;

    ActiveSession() {
    }

    /** The service of the running workbench. */
    public static ActiveSession here() {
        return PlatformUI.getWorkbench().getService(ActiveSession.class);
    }

    /** The study in use, if one is open. */
    public Optional<StudySession> get() {
        return Optional.ofNullable(session);
    }

    /** Makes a study the one in use; null when the last one has been closed. */
    public void set(StudySession next) {
        if (next != session) {
            if (session != null) {
                session.removeListener(relay);
            }
            session = next;
            if (next != null) {
                next.addListener(relay);
            }
            tell();
        }
    }

    /**
     * Calls the follower now and whenever the study in use, its content, its file, its results or the user's choices change,
     * as long as a control lives.
     */
    public void follow(Control control, Consumer<Optional<StudySession>> follower) {
        followers.add(follower);
        control.addListener(SWT.Dispose, e -> followers.remove(follower));
        follower.accept(get());
    }

    /** Calls all followers, since what they show of the same study is to look otherwise. */
    public void tellAgain() {
        tell();
    }

    private void tell() {
        List.copyOf(followers).forEach(f -> f.accept(get()));
    }
}

package org.amberyard.workbench.session;

/** Hears of a study on the event thread. */
public interface SessionListener {

    /** The study has been edited, or an edit undone. */
    default void studyChanged(StudySession session) {
        // of no interest to those who show results only
    }

    /** The session has other results, or other knowledge of them. */
    default void evaluationChanged(StudySession session) {
        // of no interest to those who show the study only
    }

    /** The study has been saved, got another file, or become dirty or clean. */
    default void fileChanged(StudySession session) {
        // of interest to the editor
    }

    /** The what-if has found something, or has begun or ended. */
    default void whatIfChanged(StudySession session) {
        // of interest to its views
    }

    /** The user has chosen something else to look at. */
    default void choiceChanged(StudySession session) {
        // of interest to views with choices
    }
}

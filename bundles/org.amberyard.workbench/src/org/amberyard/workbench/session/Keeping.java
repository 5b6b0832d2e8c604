package org.amberyard.workbench.session;

/**
 * Something that is written into a study without being an edit of it, such as the figures that a text was given out with. Nothing takes it
 * back, and it is saved with the study.
 */
public interface Keeping {

    /** What it is called among the edits. */
    String label();

    /** Writes it into the study as it is; asked for again when edits around it were taken back or made again. */
    void write();
}

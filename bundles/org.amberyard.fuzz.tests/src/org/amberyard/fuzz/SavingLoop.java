package org.amberyard.fuzz;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.amberyard.model.io.FileSum;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;

/**
 * A program that edits a study until it is ended, keeps each edit for recovery, and saves after every third as the window does. It says
 * the number of each edit once it is kept.
 */
final class SavingLoop {
    private static final int EDITS_A_SAVE = 3;
    /** Files of many sizes, so that a shorter one is written over a longer one too. */
    private static final int SIZES = 40;

    private SavingLoop() {
    }

    /** @param args the study file, and the number of the last edit before */
    public static void main(String[] args) throws StudyFileException {
        Path file = Path.of(args[0]);
        Study study = StudyFile.load(file);
        for (int edit = Integer.parseInt(args[1]) + 1;; edit++) {
            study.setDescription(text(edit));
            RecoveryFile.write(study, file, FileSum.of(file));
            System.out.writeBytes((edit + "\n").getBytes(StandardCharsets.US_ASCII));
            System.out.flush();
            if (edit % EDITS_A_SAVE == 0) {
                StudyFile.save(study, file);
                RecoveryFile.discard(file);
            }
        }
    }

    /** What an edit makes the description of the study. */
    static String text(int edit) {
        return edit + " edits" + " that are kept".repeat(edit % SIZES);
    }

    /** The number of the edit that has made a description. */
    static int edit(String text) {
        return Integer.parseInt(text.substring(0, text.indexOf(' ')));
    }
}

package org.amberyard.fuzz;

import java.nio.file.Path;
import org.amberyard.model.io.FileSum;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;

/** A program that edits and saves a study until it is ended; it says a letter whenever it has done both once. */
final class SavingLoop {
    /** What the study is described as, in turn. */
    static final String[] TEXTS = {"the one version", "the other version, which is longer by some words"};

    private SavingLoop() {
    }

    /** @param args the study file */
    public static void main(String[] args) throws StudyFileException {
        Path file = Path.of(args[0]);
        Study study = StudyFile.load(file);
        for (int turn = 0;; turn++) {
            study.setDescription(TEXTS[turn % TEXTS.length]);
            RecoveryFile.write(study, file, FileSum.of(file));
            StudyFile.save(study, file);
            System.out.write('s');
            System.out.flush();
        }
    }
}

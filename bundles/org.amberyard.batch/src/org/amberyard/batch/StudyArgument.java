package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;

/** Reads and saves the study that the command line names. */
final class StudyArgument {
    private StudyArgument() {
    }

    static Study load(Path file) throws WrongUse {
        if (!Files.isRegularFile(file)) {
            throw new WrongUse("STUDY is " + file + ", where there is no file; give a study file (*." + StudyFile.EXTENSION
                    + ")." + NearFiles.hint(file));
        }
        try {
            return StudyFile.load(file);
        } catch (StudyFileException e) {
            throw new WrongUse("STUDY is " + file + ". " + e.getMessage());
        }
    }

    /** Saves the study; what the file held before is kept beside it. */
    static void save(Study study, Path file) throws WrongUse {
        try {
            StudyFile.save(study, file);
        } catch (StudyFileException e) {
            throw new WrongUse("STUDY is " + file + ". " + e.getMessage());
        }
    }
}

package org.amberyard.study;

import java.nio.file.Path;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;

/** The example that comes with the program. */
final class ExampleStudy {
    private ExampleStudy() {
    }

    static Study load() throws StudyFileException {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        return StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
    }
}

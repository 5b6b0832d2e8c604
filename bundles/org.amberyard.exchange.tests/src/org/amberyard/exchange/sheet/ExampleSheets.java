package org.amberyard.exchange.sheet;

import java.nio.file.Path;
import org.amberyard.model.study.Study;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests of sheets that go into the invented example; files and study are new for each. */
abstract class ExampleSheets {
    @TempDir
    Path folder;
    SampleSheets samples;
    Study study;

    @BeforeEach
    void prepare() throws Exception {
        samples = new SampleSheets(folder);
        study = SampleSheets.example();
    }
}

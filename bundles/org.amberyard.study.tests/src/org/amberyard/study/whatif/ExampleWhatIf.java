package org.amberyard.study.whatif;

import java.nio.file.Path;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;

/** The example with a what-if of one's own. */
final class ExampleWhatIf {
    private ExampleWhatIf() {
    }

    /** The example as it is. */
    static Study example() throws StudyFileException {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        return StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
    }

    /** The example without any uncertain input. */
    static Study without(int draws) throws StudyFileException {
        Study study = example();
        study.setWhatIf(WhatifFactory.eINSTANCE.createWhatIf());
        study.getWhatIf().setDraws(draws);
        return study;
    }

    /** Adds an input that is multiplied by 0.8 to 1.2. */
    static UncertainInput add(Study study, String name, String kind, String element, String field) {
        UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();
        input.setName(name);
        input.setKind(kind);
        input.setElement(element);
        input.setField(field);
        study.getWhatIf().getInputs().add(input);
        return input;
    }
}

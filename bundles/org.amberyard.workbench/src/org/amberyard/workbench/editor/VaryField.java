package org.amberyard.workbench.editor;

import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.amberyard.study.whatif.VariedField;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.osgi.util.NLS;

/** Makes a field an uncertain input, in one edit, also where the study has no what-if yet. */
final class VaryField {
    private final StudySession session;

    VaryField(StudySession session) {
        this.session = session;
    }

    /**
     * Adds the input; answers it.
     *
     * @throws IllegalArgumentException with words for people when the field cannot be varied
     */
    UncertainInput vary(EObject element, EStructuralFeature field) {
        Study study = session.study();
        UncertainInput input = VariedField.of(study, element, field);
        CompoundCommand edit = new CompoundCommand(0, NLS.bind(Messages.WhatIf_vary, Words.field(field).label()));
        edit.append(study.getWhatIf() == null ? beginning(study, input)
                : AddCommand.create(session.domain(), study.getWhatIf(), Literals.WHAT_IF__INPUTS, input));
        session.execute(edit);
        return input;
    }

    private Command beginning(Study study, UncertainInput input) {
        WhatIf whatIf = WhatifFactory.eINSTANCE.createWhatIf();
        whatIf.getInputs().add(input);
        return SetCommand.create(session.domain(), study, StudyPackage.Literals.STUDY__WHAT_IF, whatIf);
    }
}

package org.amberyard.workbench.editor;

import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.ElementList;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.fields.Sheets;
import org.amberyard.workbench.session.RunQuestion;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Uncertain inputs, what goes together, draws, the grid of two inputs, and scenarios with the changes of the one in focus. */
final class WhatIfPage extends StudyPage {
    private static final EStructuralFeature[] TWO_INPUTS = {Literals.WHAT_IF__GRID_ACROSS, Literals.WHAT_IF__GRID_UPWARD,
        Literals.WHAT_IF__GRID_COLUMNS, Literals.WHAT_IF__GRID_ROWS};

    WhatIfPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = stack(parent);
        FeatureTable inputs = rows(parts, Messages.Table_uncertainInputs, new ElementList(session(), this::whatIf,
                Literals.WHAT_IF__INPUTS, Literals.UNCERTAIN_INPUT), Columns.ownFirst(Literals.UNCERTAIN_INPUT));
        inputs.addTool(Messages.WhatIf_begin, Messages.WhatIf_begin_tip, () -> begin(inputs));
        inputs.addTool(Messages.WhatIf_duration, Messages.WhatIf_duration_tip,
                () -> session().whatIf().estimate(found -> RunQuestion.tell(parent.getShell(), found), () -> {}));
        SashForm below = columns(parts);
        Sheets settings = new Sheets(below);
        FeatureTable draws = one(settings.area(), Messages.Table_draws, this::whatIf, Literals.WHAT_IF, TWO_INPUTS);
        FeatureTable grid = one(settings.area(), Messages.Table_twoInputs, this::whatIf, Literals.WHAT_IF, Columns.of(Literals.WHAT_IF, TWO_INPUTS)
                .toArray(EStructuralFeature[]::new));
        settings.share(draws, grid);
        Sheets sheets = new Sheets(below);
        FeatureTable scenarios = rows(sheets.area(), Messages.Table_scenarios, new ElementList(session(), this::whatIf,
                Literals.WHAT_IF__SCENARIOS, Literals.SCENARIO), Columns.of(Literals.SCENARIO));
        FeatureTable pairs = rows(sheets.area(), Messages.Table_correlations, new ElementList(session(), this::whatIf,
                Literals.WHAT_IF__CORRELATIONS, Literals.INPUT_CORRELATION), Columns.of(Literals.INPUT_CORRELATION));
        sheets.share(scenarios, pairs);
        FeatureTable changes = rows(below, Messages.Table_changes, scenarios::selected, Literals.SCENARIO__CHANGES,
                Literals.SCENARIO_CHANGE);
        drive(scenarios, changes);
        // Below, the four settings of the grid have room, and beside their labels the way of sampling.
        parts.setWeights(50, 50);
        below.setWeights(33, 27, 40);
        return parts;
    }

    private WhatIf whatIf() {
        return study().getWhatIf();
    }

    /** A study without a what-if gets one when somebody wants to enter an input. */
    private void begin(FeatureTable inputs) {
        if (whatIf() == null) {
            session().execute(beginning(session().domain(), study()), Messages.WhatIf_beginning);
        }
        inputs.addElement();
    }

    /** The edit that gives a study a what-if. */
    static Command beginning(EditingDomain domain, Study study) {
        return SetCommand.create(domain, study, StudyPackage.Literals.STUDY__WHAT_IF, WhatifFactory.eINSTANCE.createWhatIf());
    }
}

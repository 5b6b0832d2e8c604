package org.amberyard.model.validation;

import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatIf;
import org.amberyard.model.whatif.WhatifPackage.Literals;
import org.eclipse.emf.ecore.EReference;

/**
 * The inputs that are chosen for the grid of two inputs are two, each of a range. A wrong choice concerns the grid alone, so all else
 * is worked out.
 */
final class TwoInputsRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        WhatIf whatIf = study.getWhatIf();
        if (whatIf == null) {
            return;
        }
        if (whatIf.getGridUpward() != null && whatIf.getGridUpward() == whatIf.getGridAcross()) {
            findings.warning(whatIf, Literals.WHAT_IF__GRID_UPWARD, "“" + ElementNames.of(whatIf.getGridUpward())
                    + "” runs across the grid already, so there is no grid; choose another input to run upward, or none.");
        } else {
            checkRange(whatIf, Literals.WHAT_IF__GRID_ACROSS, whatIf.getGridAcross(), findings);
            checkRange(whatIf, Literals.WHAT_IF__GRID_UPWARD, whatIf.getGridUpward(), findings);
        }
    }

    private static void checkRange(WhatIf whatIf, EReference where, UncertainInput chosen, Findings findings) {
        if (chosen != null && chosen.getShape() == Shape.LIST) {
            findings.warning(whatIf, where, "“" + ElementNames.of(chosen) + "” is a list, which has nothing between its values, so the grid takes the "
                    + "input that decides most in its place; choose an input of another shape for the grid, or none.");
        }
    }
}

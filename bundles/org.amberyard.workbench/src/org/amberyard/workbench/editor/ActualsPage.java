package org.amberyard.workbench.editor;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.StudyPackage.Literals;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/**
 * What came of years that are over, and what buses bring from them. The tables stand side by side, for below each other a low window
 * shows hardly a row of each.
 */
final class ActualsPage extends StudyPage {
    /** What came of a year, each beside what was foreseen of it. */
    private static final List<EStructuralFeature> FIGURES = List.of(Literals.YEAR_ACTUALS__ELECTRICITY_KWH,
            Literals.YEAR_ACTUALS__FORESEEN_ELECTRICITY_KWH, Literals.YEAR_ACTUALS__ELECTRICITY_COST,
            Literals.YEAR_ACTUALS__FORESEEN_ELECTRICITY_COST, Literals.YEAR_ACTUALS__FUEL_L, Literals.YEAR_ACTUALS__FORESEEN_FUEL_L,
            Literals.YEAR_ACTUALS__FUEL_COST, Literals.YEAR_ACTUALS__FORESEEN_FUEL_COST, Literals.YEAR_ACTUALS__UPKEEP_COST,
            Literals.YEAR_ACTUALS__FORESEEN_UPKEEP_COST);
    private static final int[] SHARES = {3, 2};

    ActualsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm parts = columns(parent);
        rows(parts, Messages.Table_actuals, list(Literals.STUDY__ACTUALS, Literals.YEAR_ACTUALS), actuals());
        rows(parts, Messages.Table_busRecords, this::study, Literals.STUDY__BUS_RECORDS, FleetPackage.Literals.BUS_RECORD);
        parts.setWeights(SHARES);
        return parts;
    }

    /** The year, its figures in pairs, and all else of it. */
    static List<EStructuralFeature> actuals() {
        List<EStructuralFeature> all = Columns.of(Literals.YEAR_ACTUALS);
        return Stream.of(all.stream().limit(1), FIGURES.stream(), all.stream().skip(1).filter(f -> !FIGURES.contains(f))).flatMap(s -> s)
                .toList();
    }
}

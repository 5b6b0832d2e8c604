package org.amberyard.workbench.editor;

import org.amberyard.model.air.AirPackage;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Emission factors: what is chosen for the whole study, and the tables of engines, power plants, dust, fuels and harm. */
final class AirPage extends StudyPage {

    AirPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        one(columns, Messages.Table_emissions, this::factors, StudyPackage.Literals.EMISSION_FACTORS);
        SashForm middle = stack(columns);
        FeatureTable engines = table(middle, Messages.Table_engineEmissions,
                StudyPackage.Literals.EMISSION_FACTORS__ENGINE_EMISSIONS, AirPackage.Literals.ENGINE_EMISSION);
        engines.addTool(Messages.DefaultFactors, Messages.DefaultFactors_tip, () -> new AddDefaultFactors(session()).run());
        table(middle, Messages.Table_gridEmissions, StudyPackage.Literals.EMISSION_FACTORS__GRID_EMISSIONS,
                AirPackage.Literals.GRID_EMISSION);
        table(middle, Messages.Table_wearEmissions, StudyPackage.Literals.EMISSION_FACTORS__WEAR_EMISSIONS,
                AirPackage.Literals.WEAR_EMISSION);
        SashForm right = stack(columns);
        table(right, Messages.Table_fuelEmissions, StudyPackage.Literals.EMISSION_FACTORS__FUEL_EMISSIONS,
                AirPackage.Literals.FUEL_EMISSION);
        table(right, Messages.Table_socialCosts, StudyPackage.Literals.EMISSION_FACTORS__SOCIAL_COSTS,
                AirPackage.Literals.SOCIAL_COST);
        table(right, Messages.Table_healthCosts, StudyPackage.Literals.EMISSION_FACTORS__HEALTH_COSTS,
                AirPackage.Literals.HEALTH_COST);
        middle.setWeights(5, 4, 2);
        right.setWeights(3, 5, 3);
        columns.setWeights(4, 6, 5);
        return columns;
    }

    private EmissionFactors factors() {
        return study().getEmissionFactors();
    }

    private FeatureTable table(Composite parent, String title, EReference list, EClass type) {
        return rows(parent, title, this::factors, list, type);
    }
}

package org.amberyard.workbench.editor;

import org.amberyard.model.air.AirPackage;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.fields.Sheets;
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
        Sheets sheets = new Sheets(columns);
        sheets.share(table(sheets, Messages.Table_engineEmissions, StudyPackage.Literals.EMISSION_FACTORS__ENGINE_EMISSIONS,
                AirPackage.Literals.ENGINE_EMISSION),
                table(sheets, Messages.Table_fuelEmissions, StudyPackage.Literals.EMISSION_FACTORS__FUEL_EMISSIONS,
                        AirPackage.Literals.FUEL_EMISSION),
                table(sheets, Messages.Table_gridEmissions, StudyPackage.Literals.EMISSION_FACTORS__GRID_EMISSIONS,
                        AirPackage.Literals.GRID_EMISSION),
                table(sheets, Messages.Table_wearEmissions, StudyPackage.Literals.EMISSION_FACTORS__WEAR_EMISSIONS,
                        AirPackage.Literals.WEAR_EMISSION),
                table(sheets, Messages.Table_socialCosts, StudyPackage.Literals.EMISSION_FACTORS__SOCIAL_COSTS,
                        AirPackage.Literals.SOCIAL_COST),
                table(sheets, Messages.Table_healthCosts, StudyPackage.Literals.EMISSION_FACTORS__HEALTH_COSTS,
                        AirPackage.Literals.HEALTH_COST));
        columns.setWeights(28, 72);
        return columns;
    }

    private EmissionFactors factors() {
        return study().getEmissionFactors();
    }

    private FeatureTable table(Sheets sheets, String title, EReference list, EClass type) {
        FeatureTable table = rows(sheets.area(), title, this::factors, list, type);
        table.addTool(Messages.DefaultFactors, Messages.DefaultFactors_tip, () -> new AddDefaultFactors(session()).run());
        return table;
    }
}

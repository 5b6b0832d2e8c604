package org.amberyard.workbench.editor;

import java.util.List;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Prices and how they move; the points of the path in focus stand at the right. */
final class PricesPage extends StudyPage {

    private EObject path;

    PricesPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        SashForm left = stack(columns);
        SashForm middle = stack(columns);
        FeatureTable fuels = paths(left, Messages.Table_fuels, PricesPackage.Literals.FUEL_PRICE);
        FeatureTable fluid = paths(left, Messages.Table_fluid, PricesPackage.Literals.FLUID_PRICE);
        FeatureTable indexes = paths(middle, Messages.Table_indexes, PricesPackage.Literals.COST_INDEX);
        FeatureTable packs = paths(left, Messages.Table_pack, PricesPackage.Literals.PACK_PRICE);
        path = fuels.selected();
        FeatureTable points = rows(columns, Messages.Table_points, () -> path,
                PricesPackage.Literals.PRICE_PATH__POINTS, PricesPackage.Literals.PRICE_POINT);
        List.of(fuels, fluid, indexes, packs).forEach(t -> t.drives(() -> show(t.selected(), points)));
        left.setWeights(5, 3, 3);
        columns.setWeights(5, 5, 3);
        return columns;
    }

    private FeatureTable paths(Composite parent, String title, EClass type) {
        return rows(parent, title, this::study, StudyPackage.Literals.STUDY__PRICES, type);
    }

    private void show(EObject selected, FeatureTable points) {
        if (selected != null && selected != path) {
            path = selected;
            points.update();
        }
    }
}

package org.amberyard.workbench.editor;

import java.util.List;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Prices and how they move; the points of the path in focus stand below the fuels. */
final class PricesPage extends StudyPage {

    private FeatureTable paths;

    PricesPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        SashForm left = stack(columns);
        FeatureTable fuels = paths(left, Messages.Table_fuels, PricesPackage.Literals.FUEL_PRICE);
        FeatureTable indexes = paths(columns, Messages.Table_indexes, PricesPackage.Literals.COST_INDEX);
        SashForm right = stack(columns);
        FeatureTable fluid = paths(right, Messages.Table_fluid, PricesPackage.Literals.FLUID_PRICE);
        FeatureTable packs = paths(right, Messages.Table_pack, PricesPackage.Literals.PACK_PRICE);
        paths = fuels;
        FeatureTable points = rows(left, Messages.Table_points, () -> paths.selected(),
                PricesPackage.Literals.PRICE_PATH__POINTS, PricesPackage.Literals.PRICE_POINT);
        List.of(fuels, fluid, indexes, packs).forEach(t -> t.drives(() -> show(t, points)));
        left.setWeights(6, 4);
        columns.setWeights(5, 5, 5);
        return columns;
    }

    private FeatureTable paths(Composite parent, String title, EClass type) {
        return rows(parent, title, list(StudyPackage.Literals.STUDY__PRICES, type), Columns.ownFirst(type));
    }

    /** The points are those of whatever path the table in use has in focus now, never of one that is gone. */
    private void show(FeatureTable used, FeatureTable points) {
        if (used.selected() != null) {
            paths = used;
        }
        points.update();
    }
}

package org.amberyard.workbench.editor;

import java.util.List;
import org.amberyard.model.funding.FundingPackage.Literals;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.fields.Sheets;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Programmes that pay, with the terms and awards of the one in focus; low-carbon credits and operating aid. */
final class FundingPage extends StudyPage {

    /** What tells programmes apart; all else that a notice says stands among the terms of the one in focus. */
    private static final EStructuralFeature[] MAIN = {Literals.PROGRAMME__NAME, Literals.PROGRAMME__KIND,
        Literals.PROGRAMME__FIRST_YEAR, Literals.PROGRAMME__LAST_YEAR};

    FundingPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        FeatureTable programmes = rows(columns, Messages.Table_programmes,
                list(StudyPackage.Literals.STUDY__PROGRAMMES, Literals.PROGRAMME), List.of(MAIN));
        FeatureTable terms = one(columns, Messages.Table_programme, programmes::selected, Literals.PROGRAMME, MAIN);
        Sheets sheets = new Sheets(columns);
        FeatureTable awards = rows(sheets.area(), Messages.Table_awards, programmes::selected,
                Literals.PROGRAMME__BUS_AWARDS, Literals.BUS_AWARD);
        drive(programmes, terms, awards);
        FeatureTable credits = transposed(sheets.area(), Messages.Table_credits,
                list(StudyPackage.Literals.STUDY__LOW_CARBON_CREDITS, Literals.LOW_CARBON_CREDIT),
                Columns.ownFirst(Literals.LOW_CARBON_CREDIT));
        FeatureTable points = rows(sheets.area(), Messages.Table_points, credits::selected,
                PricesPackage.Literals.PRICE_PATH__POINTS, PricesPackage.Literals.PRICE_POINT);
        drive(credits, points);
        sheets.share(awards, credits, points, transposed(sheets.area(), Messages.Table_aids,
                StudyPackage.Literals.STUDY__OPERATING_AIDS, Literals.OPERATING_AID));
        awards.titleNames(programmes::selected);
        columns.setWeights(33, 25, 42);
        return columns;
    }
}

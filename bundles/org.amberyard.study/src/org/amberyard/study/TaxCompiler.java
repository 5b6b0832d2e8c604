package org.amberyard.study;

import org.amberyard.core.finance.Convention;
import org.amberyard.core.finance.Depreciation;
import org.amberyard.core.finance.DepreciationMethod;
import org.amberyard.core.finance.Macrs;
import org.amberyard.core.finance.PropertyClass;
import org.amberyard.core.finance.StraightLineMethod;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.model.study.DepreciationClass;
import org.amberyard.model.study.Settings;

/** Compiles how the operator is taxed. */
final class TaxCompiler {
    private final Settings settings;

    TaxCompiler(Settings settings) {
        this.settings = settings;
    }

    TaxRules taxes() {
        return new TaxRules(settings.getIncomeTaxRate(), depreciation(settings.getBusDepreciation()),
                depreciation(settings.getSiteDepreciation()));
    }

    private Depreciation depreciation(DepreciationClass writtenOffAs) {
        return new Depreciation(method(writtenOffAs), settings.getBonusDepreciation());
    }

    private DepreciationMethod method(DepreciationClass writtenOffAs) {
        return switch (writtenOffAs) {
            case YEARS_3 -> new Macrs(PropertyClass.YEARS_3, convention());
            case YEARS_5 -> new Macrs(PropertyClass.YEARS_5, convention());
            case YEARS_7 -> new Macrs(PropertyClass.YEARS_7, convention());
            case YEARS_10 -> new Macrs(PropertyClass.YEARS_10, convention());
            case YEARS_15 -> new Macrs(PropertyClass.YEARS_15, convention());
            case YEARS_20 -> new Macrs(PropertyClass.YEARS_20, convention());
            case STRAIGHT_LINE -> new StraightLineMethod(settings.getStraightLineYears(), convention());
        };
    }

    private Convention convention() {
        return switch (settings.getDepreciationConvention()) {
            case HALF_YEAR -> Convention.HALF_YEAR;
            case FIRST_QUARTER -> Convention.FIRST_QUARTER;
            case SECOND_QUARTER -> Convention.SECOND_QUARTER;
            case THIRD_QUARTER -> Convention.THIRD_QUARTER;
            case FOURTH_QUARTER -> Convention.FOURTH_QUARTER;
        };
    }
}

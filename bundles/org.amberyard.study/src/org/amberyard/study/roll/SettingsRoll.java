package org.amberyard.study.roll;

import org.amberyard.model.air.AirPackage;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/**
 * Moves the base year. Prices stay as they were entered, in money of the year in which they were, and the calendar stays that
 * of the same year, so that each later year costs what it did. What has neither a path nor that year is restated.
 */
final class SettingsRoll {
    private final Study study;
    private final RollLog log;
    private final int years;

    SettingsRoll(Study study, RollLog log, int years) {
        this.study = study;
        this.log = log;
        this.years = years;
    }

    void write(boolean sameEnd) {
        Settings settings = study.getSettings();
        int base = settings.getBaseYear();
        if (settings.getPriceYear() == 0) {
            log.set(settings, Literals.SETTINGS__PRICE_YEAR, base, "prices stay as entered and rise as before");
        }
        if (settings.getCalendarYear() == 0) {
            log.set(settings, Literals.SETTINGS__CALENDAR_YEAR, base, "the same weekdays and holidays as before");
        }
        log.set(settings, Literals.SETTINGS__BASE_YEAR, base + years, "the years before it are over");
        if (sameEnd) {
            log.set(settings, Literals.SETTINGS__HORIZON_YEARS, settings.getHorizonYears() - years, "the study ends as before");
        }
        writeName(base);
        writeFactors();
    }

    /** Two studies of one name would be taken for each other. */
    private void writeName(int base) {
        String name = study.getName();
        if (name != null && !name.isBlank()) {
            String year = String.valueOf(base + years);
            log.set(study, Literals.STUDY__NAME, name.contains(String.valueOf(base)) ? name.replace(String.valueOf(base), year)
                    : name + " " + year, "another name than that of the study before");
        }
    }

    private void writeFactors() {
        double inflation = Math.pow(1 + study.getSettings().getGeneralInflation(), years);
        EmissionFactors factors = study.getEmissionFactors();
        if (factors != null) {
            restate(factors, Literals.EMISSION_FACTORS__GRID_CO2E_KG_PER_KWH, Math.pow(1 + factors.getGridTrendPerYear(), years),
                    "by its trend");
            if (!factors.getSocialCosts().isEmpty()) {
                restate(factors, Literals.EMISSION_FACTORS__SOCIAL_COST_PRICE_FACTOR, inflation, "in money of the new base year");
            }
            factors.getHealthCosts().forEach(cost -> {
                restate(cost, AirPackage.Literals.HEALTH_COST__LOW_PER_T, inflation, "in money of the new base year");
                restate(cost, AirPackage.Literals.HEALTH_COST__HIGH_PER_T, inflation, "in money of the new base year");
            });
        }
    }

    private void restate(EObject element, EAttribute field, double factor, String why) {
        log.set(element, field, factor * (double) element.eGet(field), why);
    }
}

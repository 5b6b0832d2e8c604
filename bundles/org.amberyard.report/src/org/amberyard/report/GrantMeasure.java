package org.amberyard.report;

import java.util.Optional;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.Emissions;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.report.document.PrintRounding;

/**
 * What grant tables tell of a bus: exhaust of engine and heater by pollutant, and dust by itself. Short tons are printed with as
 * many decimals as such tables have: one for carbon dioxide, three for gases, four for particles; each figure is computed
 * unrounded and rounded once.
 */
enum GrantMeasure {
    /** Nitrogen oxides of exhaust pipes. */
    NOX("NOx", Pollutant.NOX, false, 3),
    /** Fine particles of exhaust pipes. */
    PM25("PM2.5, exhaust", Pollutant.PM25, false, 4),
    /** Hydrocarbons of exhaust pipes. */
    HC("HC", Pollutant.HC, false, 3),
    /** Carbon monoxide of exhaust pipes. */
    CO("CO", Pollutant.CO, false, 3),
    /** Carbon dioxide of exhaust pipes. */
    CO2("CO2", Pollutant.CO2, false, 1),
    /** Fine particles of brakes and tyres. */
    DUST("PM2.5, brakes and tyres", Pollutant.PM25, true, 4);

    private final String label;
    private final Pollutant pollutant;
    private final boolean dust;
    private final int decimals;

    GrantMeasure(String label, Pollutant pollutant, boolean dust, int decimals) {
        this.label = label;
        this.pollutant = pollutant;
        this.dust = dust;
        this.decimals = decimals;
    }

    String label() {
        return label;
    }

    /** Pollutant of exhaust pipes; empty for dust. */
    Optional<Pollutant> pollutant() {
        return dust ? Optional.empty() : Optional.of(pollutant);
    }

    /** Mass at the bus, kg. */
    double kg(Emissions emissions) {
        return (dust ? emissions.wear() : emissions.exhaust()).kg(pollutant);
    }

    /** Mass elsewhere, kg: power plants and what is upstream are told in CO2e for carbon dioxide. */
    double elsewhereKg(Masses masses) {
        return masses.kg(elsewhere());
    }

    private Pollutant elsewhere() {
        return this == CO2 ? Pollutant.CO2E : pollutant;
    }

    /** True when a cause beside the bus tells of the pollutant; none tells of dust. */
    boolean toldOf(EmissionCause cause) {
        return !dust && (elsewhere() == Pollutant.CO2E || cause.pollutants().contains(pollutant));
    }

    /** A mass in short tons as it is printed; empty where it is not known. */
    String printed(double kg) {
        return Double.isNaN(kg) ? "" : PrintRounding.rounded(kg / GrantTerms.KG_PER_SHORT_TON, decimals).toPlainString();
    }
}

package org.amberyard.report.papers;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.funding.WeightClass;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.Lien;
import org.amberyard.model.fleet.Ownership;
import org.amberyard.report.document.CellFormat;

/**
 * A bus of today, as papers tell of it. What nobody has told is empty.
 *
 * @param vin vehicle identification number
 * @param modelYear model year of the chassis
 * @param engineModelYear model year of the engine
 * @param engine serial number and family of the engine
 * @param gvwr gross vehicle weight rating with its unit, and weight class
 * @param seats passenger seats
 * @param owner who owns it
 * @param lien whether somebody holds a lien on it
 * @param daysPerWeek days a week in service
 */
record BusFacts(String vin, int modelYear, int engineModelYear, String engine, String gvwr, String seats, String owner, String lien,
        String daysPerWeek) {
    private static final String PART = ", ";

    /** Copies what documents need of a bus. */
    static BusFacts of(Bus bus, UnitSystem system) {
        return new BusFacts(text(bus.getVin()), bus.getModelYear(), bus.getEngineModelYear(),
                Stream.of(text(bus.getEngineSerial()), text(bus.getEngineFamily())).filter(t -> !t.isEmpty()).collect(Collectors.joining(PART)),
                Optional.ofNullable(bus.getGvwrKg()).map(kg -> gvwr(kg, system)).orElse(""),
                Optional.ofNullable(bus.getSeats()).map(String::valueOf).orElse(""),
                bus.getOwnership() == Ownership.NOT_TOLD ? "" : bus.getOwnership().getLiteral(),
                bus.getLien() == Lien.NOT_TOLD ? "" : bus.getLien().getLiteral(),
                Optional.ofNullable(bus.getDaysPerWeek()).map(BusFacts::days).orElse(""));
    }

    private static String gvwr(double kg, UnitSystem system) {
        return CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(Unit.KILOGRAM.show(kg, system))) + " " + Unit.KILOGRAM.symbol(system, "")
                + ", class " + WeightClass.of(kg);
    }

    private static String days(double days) {
        return days == Math.rint(days) ? String.valueOf((int) days) : CellFormat.decimals(1).print(CellFormat.decimals(1).rounded(days));
    }

    private static String text(String value) {
        return value == null ? "" : value.strip();
    }
}

package org.amberyard.model.validation;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.model.meta.PlainNumber;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** The building's load covers the year once, in series of equal steps that hold loads. */
final class BuildingLoadRule implements Rule {
    private static final List<Integer> STEPS = List.of(24, 48, 96);

    @Override
    public void check(Study study, Findings findings) {
        Depot depot = study.getDepot();
        if (depot == null) {
            return;
        }
        Set<String> seen = new HashSet<>();
        for (BuildingLoadDay day : depot.getBuildingLoadDays()) {
            checkOnce(day, day.getMonth() + " " + day.getDayKind(), seen, findings);
            checkSeries(day, Literals.BUILDING_LOAD_DAY__MEAN_KW, findings);
            checkSeries(day, Literals.BUILDING_LOAD_DAY__PEAK_DAY_KW, findings);
            if (day.getSolarKw() != null && !day.getSolarKw().isBlank()) {
                checkSeries(day, Literals.BUILDING_LOAD_DAY__SOLAR_KW, findings);
            }
        }
        for (BuildingMonth month : depot.getBuildingMonths()) {
            checkOnce(month, month.getMonth() + " bill", seen, findings);
        }
        checkMonths(depot, findings);
    }

    private static void checkOnce(EObject row, String key, Set<String> seen, Findings findings) {
        if (!seen.add(key)) {
            findings.error(row, null, "it appears more than once; keep one.");
        }
    }

    /** A series of loads of a day has equal steps and holds loads. */
    static void checkSeries(EObject day, EAttribute field, Findings findings) {
        String trouble;
        try {
            trouble = trouble(NumberSeries.parse((String) day.eGet(field)));
        } catch (NumberFormatException e) {
            trouble = e.getMessage();
        }
        if (!trouble.isEmpty()) {
            findings.error(day, field, Findings.label(field) + ": " + trouble + "; import the meter's data again or correct it.");
        }
    }

    private static String trouble(double[] loads) {
        if (!STEPS.contains(loads.length)) {
            return "there are " + loads.length + " numbers but there must be 24, 48 or 96, from midnight to midnight";
        }
        return Arrays.stream(loads).filter(l -> !(l >= 0 && l <= 50_000)).boxed().findFirst()
                .map(l -> "a load is " + PlainNumber.text(l) + " kW but must be 0 to 50000 kW").orElse("");
    }

    /** A month without interval data or bill would count as a month without load. */
    private static void checkMonths(Depot depot, Findings findings) {
        Map<Month, Boolean> known = new EnumMap<>(Month.class);
        depot.getBuildingLoadDays().forEach(d -> known.put(d.getMonth(), true));
        depot.getBuildingMonths().forEach(m -> known.put(m.getMonth(), true));
        if (!known.isEmpty() && known.size() < Month.VALUES.size()) {
            findings.error(depot, Literals.DEPOT__BUILDING_MONTHS, "the building’s load lacks "
                    + Month.VALUES.stream().filter(m -> !known.containsKey(m)).map(Month::getLiteral)
                            .collect(Collectors.joining(", "))
                    + "; import the data of a whole year, or enter the bills of these months.");
        }
    }
}

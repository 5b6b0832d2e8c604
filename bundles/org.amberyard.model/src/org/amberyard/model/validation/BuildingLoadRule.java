package org.amberyard.model.validation;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.BuildingMonth;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.meta.LoadSeries;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** The building's load covers the year once, in series of equal steps that hold loads. */
final class BuildingLoadRule implements Rule {
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
        String trouble = LoadSeries.trouble((String) day.eGet(field));
        if (!trouble.isEmpty()) {
            findings.fault(day, field, Findings.label(field) + ": " + trouble + "; import the meter's data again or correct it.");
        }
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

package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.UpkeepCalibrations;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.core.upkeep.FailureSpread;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.ShopLoad;
import org.amberyard.core.upkeep.Skill;
import org.amberyard.core.upkeep.UpkeepCalibration;
import org.amberyard.core.upkeep.UpkeepCause;
import org.amberyard.core.upkeep.UpkeepRules;
import org.amberyard.report.ResultRows.OfYear;

/** What the rows of the tables of upkeep are made from. */
final class UpkeepRows {
    private UpkeepRows() {
    }

    /** Upkeep of a bus in a year of a plan. */
    record OfBus(StudyResult result, PlanResult plan, UpkeepYear upkeep) {
        double hours(Skill skill) {
            return upkeep.calendar().labourHours().getOrDefault(skill, 0.0);
        }

        double hours() {
            return upkeep.calendar().labourHours().values().stream().mapToDouble(Double::doubleValue).sum();
        }

        static List<OfBus> all(StudyResult result) {
            List<OfBus> rows = new ArrayList<>();
            result.plans().forEach(p -> p.upkeep().forEach(u -> rows.add(new OfBus(result, p, u))));
            return rows;
        }
    }

    /** The shop in a year of a plan. */
    record OfShop(OfYear at, Map<Skill, Double> labourHours, int highVoltagePeople, ShopLoad load,
            FailureSpread failures) {
        static List<OfShop> all(StudyResult result) {
            return OfYear.all(result).stream().map(OfShop::of).toList();
        }

        private static OfShop of(OfYear at) {
            ShopCalendar shop = at.plan().shop(at.year());
            UpkeepRules rules = at.result().input().rules().upkeep();
            return new OfShop(at, shop.labourHours(), shop.highVoltagePeople(rules.highVoltageHours()),
                    ShopLoad.of(shop, rules.shopHours()), at.plan().failures(at.year()));
        }

        double hours(Skill skill) {
            return labourHours.getOrDefault(skill, 0.0);
        }
    }

    /** A month of the shop in a year of a plan. */
    record OfMonth(OfYear at, int month, Map<Skill, Double> labourHours) {
        double hours(Skill skill) {
            return labourHours.getOrDefault(skill, 0.0);
        }

        static List<OfMonth> all(StudyResult result) {
            List<OfMonth> rows = new ArrayList<>();
            for (OfYear at : OfYear.all(result)) {
                List<Map<Skill, Double>> months = at.plan().shop(at.year()).labourHoursByMonth();
                for (int month = 0; month < months.size(); month++) {
                    rows.add(new OfMonth(at, month, months.get(month)));
                }
            }
            return rows;
        }
    }

    /** A vehicle type, or all measured buses together, with what its work orders say of its upkeep. */
    record OfType(String name, UpkeepCalibration calibration, String applied) {
        static List<OfType> all(StudyResult result) {
            UpkeepCalibrations calibrations = UpkeepCalibrations.of(result.input(), result.duty());
            List<OfType> rows = new ArrayList<>();
            UpkeepCalibration all = UpkeepCalibration.NONE;
            for (int type = 0; type < result.input().types().size(); type++) {
                UpkeepCalibration of = calibrations.of(type);
                all = all.plus(of);
                String by = calibrations.byTasks(type) ? "tasks" : "rate";
                rows.add(new OfType(result.input().types().get(type).name(), of, of.buses() > 0
                        ? "factor on all buses of the type" : "no bus measured: as the " + by + " of the type"
                                + ("rate".equals(by) ? " says" : " say")));
            }
            rows.add(new OfType("All measured", all, "not applied: each type has its own"));
            return rows;
        }

        OptionalDouble perKm(double cost) {
            return calibration.km() > 0 ? OptionalDouble.of(cost / calibration.km()) : OptionalDouble.empty();
        }

        OptionalDouble miss() {
            return calibration.measured() > 0 ? OptionalDouble.of(calibration.modelled() / calibration.measured() - 1)
                    : OptionalDouble.empty();
        }
    }

    /** A cause of upkeep, of the electric or of the engine buses of a plan over the whole study. */
    record OfCause(StudyResult result, PlanResult plan, boolean electric, UpkeepCause cause, double cost, double km) {
        static List<OfCause> all(StudyResult result) {
            List<OfCause> rows = new ArrayList<>();
            for (PlanResult plan : result.plans()) {
                for (boolean electric : new boolean[] {false, true}) {
                    add(result, plan, electric, rows);
                }
            }
            return rows;
        }

        private static void add(StudyResult result, PlanResult plan, boolean electric, List<OfCause> rows) {
            List<UpkeepYear> years = plan.upkeep().stream().filter(u -> result.input().types()
                    .get(u.record().vehicle().type()).electric().isPresent() == electric).toList();
            double km = years.stream().mapToDouble(u -> u.record().use().km()).sum();
            for (UpkeepCause cause : UpkeepCause.values()) {
                double cost = years.stream().mapToDouble(u -> u.costs().getOrDefault(cause, 0.0)).sum();
                if (cost > 0) {
                    rows.add(new OfCause(result, plan, electric, cause, cost, km));
                }
            }
        }
    }
}

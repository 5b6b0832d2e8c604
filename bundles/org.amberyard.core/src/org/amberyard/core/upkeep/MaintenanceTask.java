package org.amberyard.core.upkeep;

import java.util.Optional;
import org.amberyard.core.math.Checks;

/**
 * A task of the shop: regular, after a failure, or both.
 *
 * @param name name of the task
 * @param cause what its cost counts as
 * @param scope buses that it applies to
 * @param trigger when it falls due
 * @param failures how often it is needed out of turn, if that happens
 * @param tyres how mass and work change the distance, for a task on tyres
 * @param partsCost parts and outside services each time, base-date money
 * @param labourHours labour each time, h
 * @param skill who may do it
 * @param growthPerYear yearly rise of parts and labour with the age of the bus, as a share of those on a new bus
 */
public record MaintenanceTask(String name, UpkeepCause cause, TaskScope scope, TaskTrigger trigger,
        Optional<FailureLaw> failures, Optional<TyreWear> tyres, double partsCost, double labourHours, Skill skill,
        double growthPerYear) {

    /** @throws IllegalArgumentException when a cost, a time or the growth is negative */
    public MaintenanceTask {
        Checks.notNegative("Parts of task " + name, partsCost);
        Checks.notNegative("Labour of task " + name, labourHours);
        Checks.notNegative("Growth of task " + name, growthPerYear);
    }

    /** Parts and labour on a bus of an age over those on a new one. */
    public double ageFactor(double ageYears) {
        return 1 + growthPerYear * Math.max(0, ageYears);
    }

    /** Cost of doing it once on a bus of an age, base-date money. */
    public double cost(double ageYears, double labourRatePerHour) {
        return ageFactor(ageYears) * (partsCost + labourHours * labourRatePerHour);
    }

    /** What counts for the task in a year of driving; the distance of a task on tyres is that of its reference bus. */
    Meters meters(WearYear year) {
        Meters plain = Meters.of(year);
        return tyres.map(t -> plain.withKm(t.equivalentKm(year.km(), year.massKg(), year.tyreKwh()))).orElse(plain);
    }
}

package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a programme asks of a purchase; one that fails it is not paid for.
 *
 * @param newOnly the bus is bought new
 * @param scrapsOldBus the old bus is scrapped, so that it brings no sale
 * @param sameBodyType the new bus is of the body type of the old one
 * @param oneForOne a bus leaves the fleet for each one that is bought: no growth of the fleet is paid for
 * @param oldDiesel the old bus has a diesel engine
 * @param latestEngineYear calendar year of the newest engine that an old bus may have; empty for any
 * @param domesticContent the domestic content of buses and ports is declared
 * @param holdYears years for which a bus must stay in service; who lets it go earlier pays back in proportion
 * @param oldBus what it asks of the papers of the old bus
 */
public record Conditions(boolean newOnly, boolean scrapsOldBus, boolean sameBodyType, boolean oneForOne,
        boolean oldDiesel, OptionalInt latestEngineYear, boolean domesticContent, int holdYears, OldBusRules oldBus) {

    /** Asks nothing of the papers of the old bus. */
    public Conditions(boolean newOnly, boolean scrapsOldBus, boolean sameBodyType, boolean oneForOne, boolean oldDiesel,
            OptionalInt latestEngineYear, boolean domesticContent, int holdYears) {
        this(newOnly, scrapsOldBus, sameBodyType, oneForOne, oldDiesel, latestEngineYear, domesticContent, holdYears, OldBusRules.NONE);
    }

    /** Asks nothing. */
    public static final Conditions NONE = new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 0);

    /** The same as {@link #NONE}, but the old bus is scrapped. */
    public static final Conditions SCRAP = new Conditions(false, true, false, false, false, OptionalInt.empty(), false, 0);

    /** What a purchase fails; empty when it fulfils all. */
    public List<Refusal> failedBy(Purchase purchase) {
        List<Refusal> failed = new ArrayList<>();
        if (domesticContent && !purchase.domesticContent()) {
            add(failed, "domesticContent", "its domestic content is not declared");
        }
        purchase.bus().ifPresent(bus -> {
            if (newOnly && bus.used()) {
                add(failed, "newOnly", "it is bought used and the programme pays for new buses only");
            }
            if (oneForOne && !bus.oneLeaves()) {
                add(failed, "oneForOne", "no bus leaves the fleet for it");
            }
            bus.old().ifPresentOrElse(old -> addOfOld(old, bus, failed), () -> addWithoutOld(failed));
        });
        return failed;
    }

    private static void add(List<Refusal> failed, String field, String words) {
        failed.add(new Refusal(Limit.CONDITION, field, words));
    }

    private void addWithoutOld(List<Refusal> failed) {
        List<String> asked = new ArrayList<>();
        addIf(asked, scrapsOldBus, "scrapsOldBus");
        addIf(asked, sameBodyType, "sameBodyType");
        addIf(asked, oldDiesel, "oldDiesel");
        addIf(asked, latestEngineYear.isPresent(), "latestEngineYear");
        asked.addAll(oldBus.asked());
        asked.stream().findFirst().ifPresent(field -> add(failed, field, "it takes the place of no bus"));
    }

    private static void addIf(List<String> fields, boolean asks, String field) {
        if (asks) {
            fields.add(field);
        }
    }

    private void addOfOld(OldBus old, NewBus bus, List<Refusal> failed) {
        if (scrapsOldBus && !old.leaves()) {
            add(failed, "scrapsOldBus", "old bus " + old.unit() + " moves to another place instead of being scrapped");
        }
        if (sameBodyType && !old.bodyType().equals(bus.bodyType())) {
            add(failed, "sameBodyType", "old bus " + old.unit() + " has body type " + old.bodyType() + ", not " + bus.bodyType());
        }
        if (oldDiesel && !old.diesel()) {
            add(failed, "oldDiesel", "old bus " + old.unit() + " has no diesel engine");
        }
        if (latestEngineYear.isPresent() && old.engineModelYear() > latestEngineYear.getAsInt()) {
            add(failed, "latestEngineYear", "the engine of old bus " + old.unit() + " is of model year " + old.engineModelYear()
                    + ", newer than " + latestEngineYear.getAsInt());
        }
        failed.addAll(oldBus.failedBy(old));
    }
}

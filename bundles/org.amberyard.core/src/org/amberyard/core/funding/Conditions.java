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
 */
public record Conditions(boolean newOnly, boolean scrapsOldBus, boolean sameBodyType, boolean oneForOne,
        boolean oldDiesel, OptionalInt latestEngineYear, boolean domesticContent, int holdYears) {

    /** Asks nothing. */
    public static final Conditions NONE = new Conditions(false, false, false, false, false, OptionalInt.empty(), false, 0);

    /** The same as {@link #NONE}, but the old bus is scrapped. */
    public static final Conditions SCRAP = new Conditions(false, true, false, false, false, OptionalInt.empty(), false, 0);

    /** What a purchase fails, as clauses for messages; empty when it fulfils all. */
    public List<String> failedBy(Purchase purchase) {
        List<String> failed = new ArrayList<>();
        if (domesticContent && !purchase.domesticContent()) {
            failed.add("its domestic content is not declared");
        }
        purchase.bus().ifPresent(bus -> {
            if (newOnly && bus.used()) {
                failed.add("it is bought used and the programme pays for new buses only");
            }
            if (oneForOne && !bus.oneLeaves()) {
                failed.add("no bus leaves the fleet for it");
            }
            bus.old().ifPresentOrElse(old -> addOfOld(old, bus, failed), () -> addWithoutOld(failed));
        });
        return failed;
    }

    private void addWithoutOld(List<String> failed) {
        if (scrapsOldBus || sameBodyType || oldDiesel || latestEngineYear.isPresent()) {
            failed.add("it takes the place of no bus");
        }
    }

    private void addOfOld(OldBus old, NewBus bus, List<String> failed) {
        if (scrapsOldBus && !old.leaves()) {
            failed.add("old bus " + old.unit() + " moves to another place instead of being scrapped");
        }
        if (sameBodyType && !old.bodyType().equals(bus.bodyType())) {
            failed.add("old bus " + old.unit() + " has body type " + old.bodyType() + ", not " + bus.bodyType());
        }
        if (oldDiesel && !old.diesel()) {
            failed.add("old bus " + old.unit() + " has no diesel engine");
        }
        if (latestEngineYear.isPresent() && old.engineModelYear() > latestEngineYear.getAsInt()) {
            failed.add("the engine of old bus " + old.unit() + " is of model year " + old.engineModelYear() + ", newer than "
                    + latestEngineYear.getAsInt());
        }
    }
}

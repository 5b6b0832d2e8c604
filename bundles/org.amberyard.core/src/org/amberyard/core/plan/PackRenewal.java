package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.FadeState;
import org.amberyard.core.battery.PackLife;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.money.CostCategory;

/**
 * Replaces a pack: what is fitted and what it costs.
 *
 * <p>Under a warranty the maker gives a new pack and takes the old one in proportion to what it pays. A refurbished pack is
 * fitted where the type asks for it, no warranty pays and its health does the duty. Its losses count as half from time, half
 * from cycles, and its cycles as the same share of the limit as its lost capacity of the loss allowed (common practice, no
 * source).
 */
final class PackRenewal {
    private final StudyInput study;

    PackRenewal(StudyInput study) {
        this.study = study;
    }

    /** The bill for a bus in the course of a year. */
    PackBill bill(Vehicle worn, int year, double leastHealth) {
        BatterySpec battery = battery(worn);
        PackPrices prices = study.types().get(worn.type()).prices().packs();
        double time = study.money().time(CostCategory.BATTERY_REPLACEMENT, year);
        double newPrice = battery.nominalKwh() * study.prices().pack().at(year, time);
        double makerShare = prices.warranty().makerShare(worn.packYears(), worn.pack().km(), worn.health());
        Optional<PackPrices.Refurbished> refurbished = prices.refurbished()
                .filter(r -> makerShare == 0 && r.health() > Math.max(leastHealth, battery.life().endOfLifeShare()));
        double price = newPrice * refurbished.map(PackPrices.Refurbished::priceShare).orElse(1.0);
        double resale = new BusValues(study).oldPack(worn, year, CostCategory.BATTERY_REPLACEMENT) * (1 - makerShare);
        double labour = prices.labour() * study.prices().index(PriceDeck.Subject.UPKEEP, year, time);
        return new PackBill(price, refurbished.isPresent(), price * makerShare, labour, resale);
    }

    /** The bus with its next pack; cycles beyond the limit are already on it, so that no cycle is lost. */
    Vehicle renewed(Vehicle worn, PackReplacement.Cause cause, PackBill bill) {
        double carried = cause == PackReplacement.Cause.CYCLE_LIMIT ? worn.packCycles() - battery(worn).life().cycleLimit() : 0;
        return worn.with(bill.refurbished() ? refurbished(worn, carried)
                : new Vehicle.Pack(new PackWear(0, carried, FadeState.NEW), 0, 1));
    }

    private Vehicle.Pack refurbished(Vehicle worn, double carried) {
        PackLife life = battery(worn).life();
        PackPrices.Refurbished bought = study.types().get(worn.type()).prices().packs().refurbished().orElseThrow();
        double lifeUsed = (1 - bought.health()) / (1 - life.endOfLifeShare());
        return new Vehicle.Pack(new PackWear(0, life.cycleLimit() * lifeUsed + carried, FadeState.NEW.measured(bought.health())),
                0, bought.priceShare() / (1 - lifeUsed));
    }

    private BatterySpec battery(Vehicle vehicle) {
        return study.types().get(vehicle.type()).electric().orElseThrow().battery();
    }
}

package org.amberyard.core.plan;

import java.util.List;
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
    private final PriceBook book;

    PackRenewal(PriceBook book) {
        this.study = book.study();
        this.book = book;
    }

    /** The replacement of the pack of a bus in the course of a year. */
    FleetEvent.PackReplaced replacement(Vehicle worn, int year, int place, PackReplacement.Cause cause, double leastHealth) {
        PackPrices prices = study.types().get(worn.type()).prices().packs();
        double makerShare = prices.warranty().makerShare(worn.packYears(), worn.pack().km(), worn.health());
        boolean refurbished = makerShare == 0 && prices.refurbished()
                .filter(r -> r.health() > Math.max(leastHealth, battery(worn).life().endOfLifeShare())).isPresent();
        return new FleetEvent.PackReplaced(year, place, worn, cause, refurbished, makerShare);
    }

    /** What it costs and who pays. */
    PackBill bill(FleetEvent.PackReplaced replaced) {
        Vehicle worn = replaced.vehicle();
        CostCategory paid = CostCategory.BATTERY_REPLACEMENT;
        double price = battery(worn).nominalKwh() * priceShare(replaced) * book.at(PriceKind.NEW_PACK.one(), replaced.year(), paid);
        return new PackBill(price, replaced.refurbished(), price * replaced.makerShare(),
                book.at(PriceKind.PACK_LABOUR.of(worn.type()), replaced.year(), paid),
                new BusValues(study).oldPack(worn, 1 - replaced.makerShare()).at(book, replaced.year(), paid));
    }

    private double priceShare(FleetEvent.PackReplaced replaced) {
        return replaced.refurbished() ? study.types().get(replaced.vehicle().type()).prices().packs().refurbished().orElseThrow()
                .priceShare() : 1;
    }

    /** What the fleet pays for a replaced pack. */
    Amount amount(FleetEvent.PackReplaced replaced) {
        Vehicle worn = replaced.vehicle();
        double kwh = battery(worn).nominalKwh() * priceShare(replaced) * (1 - replaced.makerShare());
        return new Amount.Sum("pack of " + worn.unit(), List.of(
                Amount.of(kwh, PriceKind.NEW_PACK.one(), "nominal energy, times the share of a new pack's price that the fleet pays", "kWh"),
                Amount.of(1, PriceKind.PACK_LABOUR.of(worn.type()), "change of a pack", ""),
                new Amount.Credit(new BusValues(study).oldPack(worn, 1 - replaced.makerShare()))));
    }

    /** The bus with its next pack; cycles beyond the limit are already on it, so that no cycle is lost. */
    Vehicle renewed(FleetEvent.PackReplaced replaced) {
        Vehicle worn = replaced.vehicle();
        double carried = replaced.cause() == PackReplacement.Cause.CYCLE_LIMIT ? worn.packCycles() - battery(worn).life().cycleLimit() : 0;
        return worn.with(replaced.refurbished() ? refurbished(worn, carried)
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

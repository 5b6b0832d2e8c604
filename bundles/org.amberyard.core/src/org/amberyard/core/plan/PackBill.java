package org.amberyard.core.plan;

/**
 * What the replacement of one pack costs and who pays, constant money.
 *
 * @param price price of the pack that is fitted
 * @param refurbished true for a refurbished pack
 * @param makerPays part of the price that the maker pays under the warranty
 * @param labour work
 * @param resale what the old pack brings
 */
public record PackBill(double price, boolean refurbished, double makerPays, double labour, double resale) {

    /** The bill of a replacement at the prices of a study. */
    public static PackBill of(StudyInput study, FleetEvent.PackReplaced replaced) {
        return new PackRenewal(new PriceBook(study)).bill(replaced);
    }

    /** What the fleet pays. */
    public double paid() {
        return price - makerPays + labour - resale;
    }

    /** Share of the price that the maker pays. */
    public double makerShare() {
        return price > 0 ? makerPays / price : 0;
    }
}

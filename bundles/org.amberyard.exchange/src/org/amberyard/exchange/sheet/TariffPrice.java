package org.amberyard.exchange.sheet;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A price of a tariff sheet as people write it: {@code $0.148/kWh}, {@code 14.8 ¢}, {@code 5.20 per kW}, {@code 2.5 %}.
 *
 * @param value the price in whole currency, a share as 0.025
 * @param per what it is counted by
 */
record TariffPrice(double value, Per per) {
    private static final Pattern CENTS = Pattern.compile("¢|\\bcents?\\b|\\bct\\b|^c(?=/)");
    private static final int PER_CENT = 100;

    /** What a price is counted by. */
    enum Per {
        KWH("per kWh"), KW("per kW"), MONTH("per month"), SHARE("in %"), UNTOLD("");

        private final String words;

        Per(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /**
     * The price in a column.
     *
     * @param unitId column that may hold its unit
     * @throws CellFault when it is none, or is counted by something else
     */
    static TariffPrice of(MappedRow row, String id, String unitId) throws CellFault {
        SheetNumber number = row.figure(id).orElseThrow(() -> row.wrong(id, "A price is missing; enter one, 0 for none, or delete the row."));
        boolean own = !number.unit().isEmpty();
        String unit = (own ? number.unit() : row.text(unitId).orElse("")).replace('_', ' ');
        Per per = per(unit, row.currency());
        if (per == null) {
            throw row.fault(own ? id : unitId, own ? "a price per kWh, per kW or per month, or a number in %" : "USD/kWh, USD/kW, USD/month or %"
                    .replace("USD", row.currency()));
        }
        boolean small = per == Per.SHARE || CENTS.matcher(unit.toLowerCase(Locale.ROOT)).find();
        return new TariffPrice(small ? number.value() / PER_CENT : number.value(), per);
    }

    /** What a unit counts by; null for one that no tariff has. */
    private static Per per(String unit, String currency) {
        String bare = CENTS.matcher(unit.toLowerCase(Locale.ROOT)).replaceAll("").replace(currency.toLowerCase(Locale.ROOT), "")
                .replaceAll("[$€£/.·*\\s()-]|\\bper\\b|\\bdollars?\\b|\\ba\\b", "");
        return switch (bare) {
            case "" -> Per.UNTOLD;
            case "%", "percent", "pct" -> Per.SHARE;
            case "kwh", "kilowatthour", "kilowatthours" -> Per.KWH;
            case "kw", "kwmonth", "kwmo", "kilowatt", "kva", "kvamonth" -> Per.KW;
            case "month", "mo", "months", "metermonth", "customermonth", "monthly" -> Per.MONTH;
            default -> null;
        };
    }
}

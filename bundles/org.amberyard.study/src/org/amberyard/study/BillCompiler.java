package org.amberyard.study;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.audit.BillRecord;
import org.amberyard.core.audit.BillRecords;
import org.amberyard.core.audit.PrintedBill;
import org.amberyard.core.audit.PrintedLine;
import org.amberyard.core.tariff.BillingPeriod;
import org.amberyard.core.tariff.ContractStart;
import org.amberyard.core.tariff.DatedLoad;
import org.amberyard.core.tariff.MeteredDay;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.model.depot.MeterDay;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.meta.LoadSeries;
import org.amberyard.model.meta.NumberSeries;

/** Compiles printed bills and the days of the meter by which they are worked out again. */
final class BillCompiler {
    private BillCompiler() {
    }

    /** The bills whose period is known and whose tariff can be billed; findings name the others. */
    static BillRecords compile(Depot depot) {
        List<MeteredDay> days = depot.getMeterDays().stream().flatMap(d -> day(d).stream()).toList();
        List<BillRecord> bills = IntStream.range(0, depot.getMeterBills().size()).boxed().flatMap(place -> record(place, depot).stream()).toList();
        return new BillRecords(bills, new DatedLoad(days));
    }

    /** A day whose date and loads are sound; of others findings tell. */
    private static Optional<MeteredDay> day(MeterDay day) {
        return IsoDay.of(day.getDate()).filter(d -> LoadSeries.trouble(day.getLoadKw()).isEmpty())
                .map(date -> new MeteredDay(date, NumberSeries.parse(day.getLoadKw())));
    }

    /** The tariff by which a bill's meter is billed: its own, else the one in use. */
    static Tariff tariff(MeterBill bill, Depot depot) {
        return bill.getTariff() == null ? depot.getTariff() : bill.getTariff();
    }

    private static Optional<BillRecord> record(int place, Depot depot) {
        MeterBill bill = depot.getMeterBills().get(place);
        Tariff tariff = tariff(bill, depot);
        return period(bill).filter(p -> tariff != null && TariffFaults.of(tariff).isEmpty()).map(period -> {
            org.amberyard.core.tariff.Tariff compiled = TariffCompiler.compile(tariff);
            return new BillRecord(place, printed(bill, period), compiled,
                    tariff instanceof ScheduledTariff byHours ? HolidayText.parse(byHours.getHolidays()) : List.of(),
                    new ContractStart(tariff instanceof ScheduledTariff dated ? dated.getContractStartYear() : 0, compiled.settledYear()));
        });
    }

    private static PrintedBill printed(MeterBill bill, BillingPeriod period) {
        List<PrintedLine> lines = bill.getLines().stream().filter(l -> l.getAmount() != null)
                .map(l -> new PrintedLine(ElementNames.of(l), l.getAmount())).toList();
        List<String> without = bill.getLines().stream().filter(l -> l.getAmount() == null).map(ElementNames::of).toList();
        return new PrintedBill(ElementNames.of(bill), period, known(bill.getEnergyKwh()), known(bill.getDemandKw()), lines, without,
                known(bill.getTotal()));
    }

    private static Optional<BillingPeriod> period(MeterBill bill) {
        Optional<LocalDate> first = IsoDay.of(bill.getFirstDay());
        Optional<LocalDate> last = IsoDay.of(bill.getLastDay());
        return first.isPresent() && last.isPresent() && !last.get().isBefore(first.get())
                ? Optional.of(new BillingPeriod(first.get(), last.get())) : Optional.empty();
    }

    private static OptionalDouble known(Double figure) {
        return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }
}

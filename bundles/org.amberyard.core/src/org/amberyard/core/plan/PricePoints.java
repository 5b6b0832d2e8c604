package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;

/**
 * Prices at points in time that move with fields, each at a place of one array. Places that have been asked for once may be asked
 * for from several threads.
 */
final class PricePoints {
    /** Place of a price that stays. */
    static final int STAYS = -1;

    private final PriceBook book;
    private final List<PriceField> fields;
    private final Map<Key, Integer> places = new HashMap<>();
    private final List<PriceSeries> series = new ArrayList<>();

    private record Key(UnitPrice price, FlowTime time) {
    }

    /** Prices of a study of which some fields vary. */
    PricePoints(StudyInput study, List<PriceField> fields) {
        this.book = new PriceBook(study);
        this.fields = List.copyOf(fields);
    }

    /** Prices of the study itself. */
    PriceBook book() {
        return book;
    }

    /** Place of a price in a year at a time of the year. */
    int place(UnitPrice price, int year, FlowTime time) {
        Key key = new Key(price, time);
        Integer known = places.get(key);
        int first = known == null ? places.computeIfAbsent(key, this::added) : known;
        return first == STAYS ? STAYS : first + year;
    }

    private int added(Key key) {
        PriceSeries added = new PriceSeries(book.study(), key.price, key.time, fields);
        if (!added.moves()) {
            return STAYS;
        }
        series.add(added);
        return (series.size() - 1) * perSeries();
    }

    private int perSeries() {
        return book.study().years() + 1;
    }

    /** Adds a quantity at a price to a form. */
    void add(double quantity, UnitPrice price, int year, CostCategory category, PriceForm.Builder form) {
        int place = place(price, year, category.time());
        if (place == STAYS) {
            form.add(quantity * book.at(price, year, category));
        } else {
            form.add(quantity, place);
        }
    }

    /** Number of places. */
    int size() {
        return series.size() * perSeries();
    }

    /** Writes all prices at values of the fields. */
    void write(double[] values, double[] prices) {
        for (int i = 0; i < series.size(); i++) {
            series.get(i).write(values, prices, i * perSeries());
        }
    }
}

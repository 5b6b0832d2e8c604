package org.amberyard.exchange.weather;

import java.util.LinkedHashMap;
import java.util.Map;
import org.amberyard.model.common.Month;
import org.eclipse.emf.ecore.EAttribute;

/**
 * What a file tells of the climate of a month.
 *
 * @param month month
 * @param values values of attributes of a month's climate, in the units of the model
 */
record MonthValues(Month month, Map<EAttribute, Double> values) {

    MonthValues {
        values = new LinkedHashMap<>(values);
    }
}

package org.amberyard.exchange.sheet;

import java.util.Map;
import org.amberyard.model.depot.ScheduledTariff;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What a row of a tariff sheet says.
 *
 * @param row number of the row
 * @param tariff tariff that it is of
 * @param part what it is
 * @param values values of the fields that it fills, of the charge or of the tariff
 */
record TariffRow(int row, ScheduledTariff tariff, TariffPart part, Map<EStructuralFeature, Object> values) {
}

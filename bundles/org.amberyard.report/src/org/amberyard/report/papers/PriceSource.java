package org.amberyard.report.papers;

import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.study.InputSource;

/** Where the price of a vehicle type comes from, in one line. */
final class PriceSource {
    private PriceSource() {
    }

    static String of(VehicleType type) {
        return SourceWords.of(InputSource.of(type, VehiclesPackage.Literals.VEHICLE_TYPE__PURCHASE_PRICE).words());
    }
}

package org.amberyard.workbench.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesFactory;
import org.amberyard.study.BusSteps;
import org.amberyard.workbench.plan.OwnCourse.Coming;
import org.junit.jupiter.api.Test;

/** One bus over the years 2026 to 2030, as far as the steps of the plan tell. */
class OwnCourseTest {
    private final CombustionType diesel = VehiclesFactory.eINSTANCE.createCombustionType();
    private final ElectricType electric = VehiclesFactory.eINSTANCE.createElectricType();
    private final Bus bus = FleetFactory.eINSTANCE.createBus();
    private final BusSteps none = new BusSteps(bus, List.of());

    OwnCourseTest() {
        bus.setType(diesel);
        bus.setInServiceYear(2015);
    }

    /** A letter for the type and the sign of how it came. */
    private String course(BusSteps steps, Coming... coming) {
        return OwnCourse.of(steps, List.of(coming), 2026, 5).stream().map(s -> s.kind().sign() + letter(s.type()))
                .collect(Collectors.joining(" "));
    }

    private String letter(VehicleType type) {
        return type == null ? "-" : type == diesel ? "D" : "E";
    }

    @Test
    void aStepBuysOrRetires() {
        assertEquals("D D ●E E E", course(none.with(2028, electric)));
        assertEquals("D ×- - ●E E", course(none.with(2027, null).with(2029, electric)));
        assertEquals("D D D D D", course(none.with(2020, electric)), "a step before the first year has no effect");
    }

    @Test
    void aBusComesFromAnotherPlaceUnlessThatIsEmpty() {
        assertEquals("D ↳E E E E", course(none, new Coming(2027, "B9", electric)));
        assertEquals("D D D D D", course(none, new Coming(2027, "B9", null)));
        assertEquals("D ↳E E ●D D", course(none.with(2029, diesel), new Coming(2027, "B9", electric)));
    }

    @Test
    void aPlaceThatTheFleetGrowsByIsEmptyUntilThen() {
        bus.setInServiceYear(2028);
        assertEquals("- - ○D D D", course(none));
        assertEquals("- - - ●E E", course(none.with(2029, electric)));
    }

    @Test
    void aBrushSetsTheOnlyStepOrKeepsTheOthers() {
        BusSteps before = none.with(2027, diesel);
        assertEquals("D D ●E E E", course(Brush.buy(electric).painted(before, new TreeSet<>(List.of(2029, 2028)), false)));
        assertEquals("D ●D ●E E E", course(Brush.buy(electric).painted(before, new TreeSet<>(List.of(2028)), true)));
        assertEquals("D D ×- - -", course(Brush.RETIRE.painted(before, new TreeSet<>(List.of(2028)), false)));
        assertEquals("D D D D D", course(Brush.RULE.painted(before, new TreeSet<>(List.of(2030)), false)));
        assertEquals("D ●D D D D", course(Brush.RULE.painted(before.with(2028, electric), new TreeSet<>(List.of(2028)), true)));
    }
}

package org.amberyard.exchange;

import java.util.List;
import org.amberyard.model.air.AirPackage;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.model.whatif.WhatifPackage;
import org.amberyard.model.fleet.FleetPackage;

/** The tables that make up a study; owners come before the rows that they own. */
final class StudyTables {
    static final List<StudyTable> ALL = List.of(
            StudyTable.of("study", StudyPackage.Literals.STUDY),
            StudyTable.of("settings", StudyPackage.Literals.SETTINGS, StudyPackage.Literals.STUDY__SETTINGS),
            StudyTable.of("emission_factors", StudyPackage.Literals.EMISSION_FACTORS,
                    StudyPackage.Literals.STUDY__EMISSION_FACTORS),
            StudyTable.of("engine_emissions", AirPackage.Literals.ENGINE_EMISSION, StudyPackage.Literals.STUDY__EMISSION_FACTORS,
                    StudyPackage.Literals.EMISSION_FACTORS__ENGINE_EMISSIONS),
            StudyTable.of("wear_emissions", AirPackage.Literals.WEAR_EMISSION, StudyPackage.Literals.STUDY__EMISSION_FACTORS,
                    StudyPackage.Literals.EMISSION_FACTORS__WEAR_EMISSIONS),
            StudyTable.of("fuel_emissions", AirPackage.Literals.FUEL_EMISSION, StudyPackage.Literals.STUDY__EMISSION_FACTORS,
                    StudyPackage.Literals.EMISSION_FACTORS__FUEL_EMISSIONS),
            StudyTable.of("grid_emissions", AirPackage.Literals.GRID_EMISSION, StudyPackage.Literals.STUDY__EMISSION_FACTORS,
                    StudyPackage.Literals.EMISSION_FACTORS__GRID_EMISSIONS),
            StudyTable.of("social_costs", AirPackage.Literals.SOCIAL_COST, StudyPackage.Literals.STUDY__EMISSION_FACTORS,
                    StudyPackage.Literals.EMISSION_FACTORS__SOCIAL_COSTS),
            StudyTable.of("health_costs", AirPackage.Literals.HEALTH_COST, StudyPackage.Literals.STUDY__EMISSION_FACTORS,
                    StudyPackage.Literals.EMISSION_FACTORS__HEALTH_COSTS),
            StudyTable.of("site", SitePackage.Literals.SITE, StudyPackage.Literals.STUDY__SITE),
            StudyTable.of("climate", SitePackage.Literals.MONTH_CLIMATE, StudyPackage.Literals.STUDY__SITE,
                    SitePackage.Literals.SITE__CLIMATE),
            StudyTable.of("calendars", SitePackage.Literals.SERVICE_CALENDAR, StudyPackage.Literals.STUDY__CALENDARS),
            StudyTable.of("traces", RoutesPackage.Literals.DRIVE_TRACE, StudyPackage.Literals.STUDY__TRACES),
            StudyTable.of("routes", RoutesPackage.Literals.ROUTE, StudyPackage.Literals.STUDY__ROUTES),
            StudyTable.of("runs", RoutesPackage.Literals.RUN, StudyPackage.Literals.STUDY__ROUTES,
                    RoutesPackage.Literals.ROUTE__RUNS),
            StudyTable.of("engine_types", VehiclesPackage.Literals.COMBUSTION_TYPE,
                    StudyPackage.Literals.STUDY__VEHICLE_TYPES),
            StudyTable.of("electric_types", VehiclesPackage.Literals.ELECTRIC_TYPE,
                    StudyPackage.Literals.STUDY__VEHICLE_TYPES),
            StudyTable.of("buses", FleetPackage.Literals.BUS, StudyPackage.Literals.STUDY__BUSES),
            StudyTable.of("bus_records", FleetPackage.Literals.BUS_RECORD, StudyPackage.Literals.STUDY__BUS_RECORDS),
            StudyTable.of("consumption_logs", FleetPackage.Literals.CONSUMPTION_LOG,
                    StudyPackage.Literals.STUDY__CONSUMPTION_LOGS),
            StudyTable.of("maintenance_tasks", FleetPackage.Literals.MAINTENANCE_TASK,
                    StudyPackage.Literals.STUDY__MAINTENANCE_TASKS),
            StudyTable.of("trips", RoutesPackage.Literals.TRIP, StudyPackage.Literals.STUDY__TRIPS),
            StudyTable.of("depot", DepotPackage.Literals.DEPOT, StudyPackage.Literals.STUDY__DEPOT),
            StudyTable.of("port_types", DepotPackage.Literals.PORT_TYPE, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__PORT_TYPES),
            StudyTable.of("site_works", DepotPackage.Literals.SITE_WORK, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__WORKS),
            StudyTable.of("service_upgrades", DepotPackage.Literals.SERVICE_UPGRADE, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__UPGRADES),
            StudyTable.of("building_months", DepotPackage.Literals.BUILDING_MONTH, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__BUILDING_MONTHS),
            StudyTable.of("building_load_days", DepotPackage.Literals.BUILDING_LOAD_DAY, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__BUILDING_LOAD_DAYS),
            StudyTable.of("tariff", DepotPackage.Literals.FLAT_TARIFF, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__TARIFF),
            StudyTable.of("tariff_by_hours", DepotPackage.Literals.SCHEDULED_TARIFF, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__TARIFF),
            StudyTable.of("tariff_charges", DepotPackage.Literals.TARIFF_CHARGE, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__TARIFF, DepotPackage.Literals.SCHEDULED_TARIFF__CHARGES),
            StudyTable.of("alternative_tariffs", DepotPackage.Literals.FLAT_TARIFF, StudyPackage.Literals.STUDY__DEPOT,
                    DepotPackage.Literals.DEPOT__ALTERNATIVE_TARIFFS),
            StudyTable.of("alternative_tariffs_by_hours", DepotPackage.Literals.SCHEDULED_TARIFF,
                    StudyPackage.Literals.STUDY__DEPOT, DepotPackage.Literals.DEPOT__ALTERNATIVE_TARIFFS),
            StudyTable.of("alternative_tariff_charges", DepotPackage.Literals.TARIFF_CHARGE,
                    StudyPackage.Literals.STUDY__DEPOT, DepotPackage.Literals.DEPOT__ALTERNATIVE_TARIFFS,
                    DepotPackage.Literals.SCHEDULED_TARIFF__CHARGES),
            StudyTable.of("fuel_prices", PricesPackage.Literals.FUEL_PRICE, StudyPackage.Literals.STUDY__PRICES),
            StudyTable.of("exhaust_fluid_price", PricesPackage.Literals.FLUID_PRICE, StudyPackage.Literals.STUDY__PRICES),
            StudyTable.of("pack_price", PricesPackage.Literals.PACK_PRICE, StudyPackage.Literals.STUDY__PRICES),
            StudyTable.of("cost_indices", PricesPackage.Literals.COST_INDEX, StudyPackage.Literals.STUDY__PRICES),
            StudyTable.of("price_points", PricesPackage.Literals.PRICE_POINT, StudyPackage.Literals.STUDY__PRICES,
                    PricesPackage.Literals.PRICE_PATH__POINTS),
            StudyTable.of("programmes", FundingPackage.Literals.PROGRAMME, StudyPackage.Literals.STUDY__PROGRAMMES),
            StudyTable.of("bus_awards", FundingPackage.Literals.BUS_AWARD, StudyPackage.Literals.STUDY__PROGRAMMES,
                    FundingPackage.Literals.PROGRAMME__BUS_AWARDS),
            StudyTable.of("low_carbon_credits", FundingPackage.Literals.LOW_CARBON_CREDIT,
                    StudyPackage.Literals.STUDY__LOW_CARBON_CREDITS),
            StudyTable.of("low_carbon_price_points", PricesPackage.Literals.PRICE_POINT,
                    StudyPackage.Literals.STUDY__LOW_CARBON_CREDITS, PricesPackage.Literals.PRICE_PATH__POINTS),
            StudyTable.of("operating_aids", FundingPackage.Literals.OPERATING_AID,
                    StudyPackage.Literals.STUDY__OPERATING_AIDS),
            StudyTable.of("plans", PlansPackage.Literals.PLAN, StudyPackage.Literals.STUDY__PLANS),
            StudyTable.of("replacements", PlansPackage.Literals.REPLACEMENT, StudyPackage.Literals.STUDY__PLANS,
                    PlansPackage.Literals.PLAN__REPLACEMENTS),
            StudyTable.of("port_purchases", PlansPackage.Literals.PORT_PURCHASE, StudyPackage.Literals.STUDY__PLANS,
                    PlansPackage.Literals.PLAN__PORT_PURCHASES),
            StudyTable.of("work_orders", PlansPackage.Literals.WORK_ORDER, StudyPackage.Literals.STUDY__PLANS,
                    PlansPackage.Literals.PLAN__WORK_ORDERS),
            StudyTable.of("one_off_costs", PlansPackage.Literals.ONE_OFF_COST, StudyPackage.Literals.STUDY__PLANS,
                    PlansPackage.Literals.PLAN__ONE_OFF_COSTS),
            StudyTable.of("financing", PlansPackage.Literals.FINANCING, StudyPackage.Literals.STUDY__PLANS,
                    PlansPackage.Literals.PLAN__FINANCING),
            StudyTable.of("actuals", StudyPackage.Literals.YEAR_ACTUALS, StudyPackage.Literals.STUDY__ACTUALS),
            StudyTable.of("chart_notes", StudyPackage.Literals.CHART_NOTE, StudyPackage.Literals.STUDY__CHART_NOTES),
            StudyTable.of("what_if", WhatifPackage.Literals.WHAT_IF, StudyPackage.Literals.STUDY__WHAT_IF),
            StudyTable.of("uncertain_inputs", WhatifPackage.Literals.UNCERTAIN_INPUT, StudyPackage.Literals.STUDY__WHAT_IF,
                    WhatifPackage.Literals.WHAT_IF__INPUTS),
            StudyTable.of("input_correlations", WhatifPackage.Literals.INPUT_CORRELATION, StudyPackage.Literals.STUDY__WHAT_IF,
                    WhatifPackage.Literals.WHAT_IF__CORRELATIONS),
            StudyTable.of("scenarios", WhatifPackage.Literals.SCENARIO, StudyPackage.Literals.STUDY__WHAT_IF,
                    WhatifPackage.Literals.WHAT_IF__SCENARIOS),
            StudyTable.of("scenario_changes", WhatifPackage.Literals.SCENARIO_CHANGE, StudyPackage.Literals.STUDY__WHAT_IF,
                    WhatifPackage.Literals.WHAT_IF__SCENARIOS, WhatifPackage.Literals.SCENARIO__CHANGES));

    private StudyTables() {
    }
}

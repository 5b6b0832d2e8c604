package org.amberyard.model.meta;

import java.util.List;
import org.amberyard.model.air.AirPackage;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.model.whatif.WhatifPackage;
import org.eclipse.emf.ecore.EPackage;

/** The Ecore packages of the model. Naming them registers them, which a plain Java program needs before it reads a file. */
public final class ModelPackages {
    private ModelPackages() {
    }

    /** All packages in the order in which a study is filled in. */
    public static List<EPackage> all() {
        return List.of(StudyPackage.eINSTANCE, SitePackage.eINSTANCE, RoutesPackage.eINSTANCE, VehiclesPackage.eINSTANCE,
                FleetPackage.eINSTANCE, DepotPackage.eINSTANCE, PricesPackage.eINSTANCE, FundingPackage.eINSTANCE,
                AirPackage.eINSTANCE, PlansPackage.eINSTANCE, WhatifPackage.eINSTANCE, CommonPackage.eINSTANCE);
    }
}

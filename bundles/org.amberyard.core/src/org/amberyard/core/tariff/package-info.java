/** The tariff of an electricity supplier and the bills that follow from a metered load. */
package org.amberyard.core.tariff;

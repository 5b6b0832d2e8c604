/** Paying for purchases over time: loans, leases and bonds, depreciation and taxes. All amounts are in money of their time. */
package org.amberyard.core.finance;

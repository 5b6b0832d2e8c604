/** Invented studies that the tests of several bundles share. */
package org.amberyard.testsupport;

/** The shop's papers in the window. */
package org.amberyard.workbench.shop;

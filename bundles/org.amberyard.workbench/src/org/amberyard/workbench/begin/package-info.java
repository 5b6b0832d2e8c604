/** The ten questions with which a new study begins. */
package org.amberyard.workbench.begin;

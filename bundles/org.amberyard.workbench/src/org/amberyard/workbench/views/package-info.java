/** Views beside the editor: outline, headline, findings, result tables. */
package org.amberyard.workbench.views;

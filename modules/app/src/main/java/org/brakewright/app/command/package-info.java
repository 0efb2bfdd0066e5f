/** The command line. */
@NullMarked
package org.brakewright.app.command;

import org.jspecify.annotations.NullMarked;

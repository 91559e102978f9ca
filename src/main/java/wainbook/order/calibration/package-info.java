/** How a vehicle shall drive: the calibration that an order asks for, and whether the vehicle has it. */
package wainbook.order.calibration;

// Package melt holds what sets and melts in a food: its ice, milk fat
// and cocoa butter, as specific heats and conductivities by temperature
// for heat.Volumes.
//
// Packages makeup and history call it. It reads no ingredient table and
// solves no course. SI units, temperatures in C.
//
//   - OnsetC, Ice: freezing and thawing
//   - SolidFat, MilkFatCurve: milk fat
//   - Chocolate, ChocolateHeats: dark chocolate
package melt

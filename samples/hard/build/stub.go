package main
func boathouseLists() []hard { return nil }
func rinks() []hard { return nil }
func rinkBooks() []hard { return nil }
func planetaria() []hard { return nil }
func german() []hard { return nil }
func french() []hard { return nil }
func spanish() []hard { return nil }
func italian() []hard { return nil }
func dutch() []hard { return nil }
func strangers() []hard { return nil }

command-serve-simulating = Simulating ten weeks of an invented home ...
command-serve-invented = { $n ->
    [one] { $n } event, invented.
   *[other] { $n } events, all invented.
} Nothing here is evidence about real animals.
command-serve-holds-home = { $dir } holds a home already; serving it.
command-serve-code = Pairing code for a phone (good for { $minutes ->
    [one] one minute
   *[other] { $minutes } minutes
}): { $code }
command-serve-open = Sayso is open at { $url }
command-serve-no-address = This machine has no address on a home network, so no phone can reach it.
command-serve-from-phone = From a phone on the same network: { $url } (then type the pairing code)
command-serve-certificate = Once on each phone the page there installs this home's certificate; its fingerprint (SHA-256) must be
command-serve-strange-address =
    This machine's address is none of the kinds homes use, so the certificate cannot vouch for it.
    Open this machine's name on the network, ending in .local, instead.
command-serve-this-machine =
    Only this machine is answered. To use a phone, stop with Ctrl-C and start again with --lan;
    this code then opens { $url } on the phone:
command-serve-no-qr = (no QR code: { $why })
command-serve-stop = Stop with Ctrl-C.
command-serve-no-folder = { $dir } is no folder; give that of the notebook
command-serve-device = { $id }  { $name } ({ $how ->
    [plain] over plain HTTP
   *[safe] over HTTPS
}), paired { $paired }, last seen { $seen }
command-serve-no-device = No device is paired.
command-serve-no-such-device = no paired device has the id { $id }; the list shows which there are
command-serve-port-taken = { $at } cannot be opened: { $why }; is Sayso running already? Choose another port, or an address of this machine
command-serve-cannot-open = the notebook cannot be opened: { $why }
command-serve-not-safe = HTTPS cannot be served: { $why }
command-serve-certificate-content = { $file } does not hold a certificate and its key: { $why }. Bring it back from a copy, or delete it: a new one is then made, and every phone has to install that
command-serve-certificate-making = no certificate could be made: { $why }
command-serve-certificate-using = the certificate cannot be used: { $why }
